import { useMemo, useRef, useState } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { buildGrid } from '../../../drawing/bead-grid.ts'
import { BeadPicture } from '../../../drawing/bead-picture.tsx'
import { highlightLayer } from '../../../drawing/layers/highlight-layer.ts'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import { EmptyState } from '../../../ui/empty-state.tsx'
import { FigureList } from '../../../ui/figure-list.tsx'
import { type Assembly, assemble } from '../assembly/assemble.ts'
import { findingLayer } from '../assembly/finding.ts'
import { firstFigures } from '../figures/first-figures.ts'
import { beadAt } from '../page/bead-at.ts'
import { describePiece } from '../page/describe-piece.ts'
import type { SlotBead } from '../page/slot-beads.ts'
import { type ShownWarning, WarningList } from '../page/warning-list.tsx'
import type { PlainReading } from '../reading/plain-reading.ts'
import { scaleBarLayer } from './scale-bar-layer.ts'

type PartsStageProps = Readonly<{
  name: string
  body: DesignBody
  reading: PlainReading | undefined
  beads: readonly SlotBead[]
  partId: string | undefined
  format: Format
  /** A bead of the drawn piece was chosen. */
  onBead: (partId: string, bead: number) => void
}>

/** The whole piece in true proportion, the chosen part ringed, with its figures and warnings. */
export function PartsStage(props: PartsStageProps) {
  const { body, beads, reading, format } = props
  const [shown, setShown] = useState<ShownWarning>()
  const tables = useBeadTables()
  const assembly = useMemo(
    () => assemble({ body, tables, looks: beads, copies: 'all' }),
    [body, tables, beads],
  )
  return (
    <div className="parts-stage">
      {assembly === undefined ? (
        <EmptyState picture="strand">
          Nothing to draw yet. Add a panel or a strand, and it hangs here in true proportion.
        </EmptyState>
      ) : (
        <Drawn {...props} assembly={assembly} shown={shown} />
      )}
      <FigureList row figures={firstFigures(reading, body, format)} />
      <WarningList warnings={reading?.warnings ?? []} body={body} shown={shown} onShow={setShown} />
    </div>
  )
}

function Drawn({
  name,
  body,
  reading,
  beads,
  partId,
  format,
  onBead,
  assembly,
  shown,
}: PartsStageProps & Readonly<{ assembly: Assembly; shown: ShownWarning | undefined }>) {
  const picture = useRef<PictureHandle>(null)
  const { scene, parts, findings } = assembly
  const grid = useMemo(() => buildGrid(scene), [scene])
  const layers = useMemo(
    () => [
      findingLayer(findings),
      highlightLayer(chosenBeads(assembly, partId, body)),
      highlightLayer(warnedBeads(assembly, shown), 'warn'),
      scaleBarLayer,
    ],
    [assembly, findings, partId, body, shown],
  )
  const tool = useMemo(
    () => ({
      cursor: 'pointer',
      onDown: (point: Readonly<{ xMm: number; yMm: number }>) => {
        const bead = beadAt(scene, grid, point)
        const placed = parts.find(
          ({ firstBead, beads: count }) => bead >= firstBead && bead < firstBead + count,
        )
        if (placed !== undefined) onBead(placed.partId, bead - placed.firstBead)
      },
      onMove: () => undefined,
      onUp: () => undefined,
    }),
    [scene, grid, parts, onBead],
  )
  return (
    <div className="parts-picture">
      <BeadPicture
        ref={picture}
        scene={scene}
        label={`${name}, all its parts`}
        description={describePiece({ body, reading, beads, format })}
        layers={layers}
        tool={tool}
      />
    </div>
  )
}

/** More beads than this are not ringed: a panel is known by its place. */
const MOST_RINGED = 400

/** The beads of the chosen strand, and the bead it hangs from. */
function chosenBeads(
  { parts }: Assembly,
  partId: string | undefined,
  body: DesignBody,
): readonly number[] {
  const part = body.parts.find(({ id }) => id === partId)
  if (part?.kind !== 'strand') return []
  const own = parts
    .filter((placed) => placed.partId === partId)
    .flatMap(({ firstBead, beads }) => Array.from({ length: beads }, (_, bead) => firstBead + bead))
  const panel = parts.find((placed) => placed.partId === part.anchor?.panelId)
  const first = panel?.index?.rowStart[part.anchor?.row ?? 0] ?? 0
  const hook = panel === undefined ? [] : [panel.firstBead + first + (part.anchor?.bead ?? 0)]
  return [...own.slice(0, MOST_RINGED), ...hook]
}

function warnedBeads({ parts }: Assembly, shown: ShownWarning | undefined): readonly number[] {
  if (shown === undefined) return []
  return parts
    .filter(({ partId, copy }) => partId === shown.partId && copy === 0)
    .flatMap(({ firstBead }) => shown.beads.map((bead) => firstBead + bead))
}
