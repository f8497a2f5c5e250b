import { useMemo, useRef, useState } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { BeadPicture } from '../../../drawing/bead-picture.tsx'
import { highlightLayer } from '../../../drawing/layers/highlight-layer.ts'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import { Button } from '../../../ui/button.tsx'
import { EmptyState } from '../../../ui/empty-state.tsx'
import type { Assembly } from '../assembly/assemble.ts'
import { findingLayer } from '../assembly/finding.ts'
import { isLong, layAcross } from '../assembly/lay-across.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import { createPlayer } from '../thread/player.ts'
import { describePiece } from './describe-piece.ts'
import { FillLegend } from './fill-legend.tsx'
import { PassLegend } from './pass-legend.tsx'
import type { ShownStep } from './shown-step.ts'
import type { SlotBead } from './slot-beads.ts'
import { tellBead } from './tell-bead.ts'
import { ThreadStrip } from './thread-strip.tsx'
import { useFollow } from './use-follow.ts'
import { useLevelView } from './use-level-view.ts'
import { useThreadView } from './use-thread-view.ts'
import { useToldBead } from './use-told-bead.ts'
import type { ViewName } from './views.ts'
import { type ShownWarning, WarningList } from './warning-list.tsx'

type PictureStageProps = Readonly<{
  view: ViewName
  name: string
  body: DesignBody
  reading: PlainReading | undefined
  assembly: Assembly | undefined
  beads: readonly SlotBead[]
  /** A step chosen elsewhere to be looked at. */
  step: ShownStep | undefined
  format: Format
}>

/** The piece as beads, and over it whatever the view tells: the thread, its passes, its holes. */
export function PictureStage(props: PictureStageProps) {
  const { assembly: hanging, body } = props
  const [asked, setAsked] = useState<boolean>()
  const isLying = asked ?? (hanging !== undefined && isBetterLying(hanging, body))
  const assembly = useMemo(
    () => (isLying && hanging !== undefined ? layAcross(hanging) : hanging),
    [isLying, hanging],
  )
  if (assembly === undefined) {
    return (
      <EmptyState picture="strand">
        This design has no beads yet. Bring in a chart, and it is drawn here.
      </EmptyState>
    )
  }
  return (
    <Stage {...props} assembly={assembly} isLying={isLying} onTurn={() => setAsked(!isLying)} />
  )
}

/** Long flat pieces lie on the table; what has strands hangs as it is worn. */
function isBetterLying({ scene }: Assembly, { parts }: DesignBody): boolean {
  return isLong(scene) && parts.every(({ kind }) => kind === 'panel')
}

type StageProps = PictureStageProps &
  Readonly<{ assembly: Assembly; isLying: boolean; onTurn: () => void }>

function Stage({
  view,
  name,
  body,
  reading,
  assembly,
  beads,
  step,
  format,
  isLying,
  onTurn,
}: StageProps) {
  const [shown, setShown] = useState<ShownWarning>()
  const player = useMemo(createPlayer, [])
  const thread = useThreadView({ isOn: view === 'thread', body, reading, assembly, player, step })
  const levels = useLevelView({ view, reading, assembly })
  const picture = useRef<PictureHandle>(null)
  const told = useToldBead(assembly, picture)
  useFollow(picture, thread.needleAt)
  const marked = useMemo(() => {
    if (shown === undefined) return undefined
    const found = assembly.parts
      .filter(({ partId }) => partId === shown.partId)
      .flatMap(({ firstBead }) => shown.beads.map((bead) => firstBead + bead))
    return highlightLayer(found, 'warn')
  }, [shown, assembly])
  const findings = useMemo(() => findingLayer(assembly.findings), [assembly])
  const layers = useMemo(
    () => [
      ...levels.layers,
      findings,
      ...thread.layers,
      ...(marked === undefined ? [] : [marked]),
      ...told.layers,
    ],
    [findings, thread.layers, levels.layers, marked, told.layers],
  )
  return (
    <div className="design-stage">
      <Button small className="design-turn" onClick={onTurn}>
        {isLying ? 'Stand it up' : 'Lay it across'}
      </Button>
      <div
        className="design-picture"
        onPointerMove={told.onPointerMove}
        onPointerLeave={told.onPointerLeave}
      >
        <BeadPicture
          ref={picture}
          scene={levels.scene}
          label={`${name}, seen from the front`}
          description={describePiece({ body, reading, beads, format })}
          layers={layers}
          onKeyDown={(event) => {
            told.onKeyDown(event)
            if (view === 'thread') thread.onKeyDown(event)
          }}
        />
        <p className="design-told" aria-live="polite">
          {told.bead < 0
            ? ''
            : tellBead(told.bead, { assembly, body, parts: reading?.parts, beads, format })}
        </p>
      </div>
      {view === 'thread' && <ThreadStrip thread={thread} body={body} player={player} />}
      {view === 'passes' && <PassLegend levels={levels.levels} format={format} />}
      {view === 'holes' && (
        <FillLegend reading={reading} body={body} levels={levels.levels} format={format} />
      )}
      <WarningList warnings={reading?.warnings ?? []} body={body} shown={shown} onShow={setShown} />
    </div>
  )
}
