import { type KeyboardEvent, memo, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { CellRef } from '../../../../shared-core/chart/chart.ts'
import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import { threadGapMm } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { BeadPicture } from '../../../drawing/bead-picture.tsx'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import { EmptyState } from '../../../ui/empty-state.tsx'
import type { SlotBead } from '../page/slot-beads.ts'
import { plus, sameCell } from './cells.ts'
import { keepInSight } from './keep-in-sight.ts'
import type { Lattice, LatticeLook } from './lattice.ts'
import { mirrorLines } from './mirror-lines.ts'
import { answerPictureKey } from './table-keys.ts'
import { crosshairLayer, mirrorLayer, selectionLayer } from './table-layers.ts'
import type { TableModel } from './table-model.ts'
import type { TableView } from './table-state.ts'
import { tellCell } from './tell-cell.ts'
import { useLattice } from './use-lattice.ts'
import { usePointerTool } from './use-pointer-tool.ts'
import { useTableView } from './use-table-model.ts'

type TableStageProps = Readonly<{
  model: TableModel
  name: string
  body: DesignBody
  beads: readonly SlotBead[]
}>

/** The beads on the table; a design without a panel has nothing to draw on. */
export const TableStage = memo(function TableStage(props: TableStageProps) {
  const hasPanel = useTableView(props.model, ({ panel }) => panel !== undefined)
  if (hasPanel) return <DrawnStage {...props} />
  return (
    <EmptyState picture="strand">
      This design has no panel to draw on. Add one under Parts, and it lies here.
    </EmptyState>
  )
})

/** The beads under brush and crosshair, and in words below them where that is. */
function DrawnStage({ model, name, body, beads }: TableStageProps) {
  const view = useTableView(model, wholeView)
  const picture = useRef<PictureHandle>(null)
  const [hovered, setHovered] = useState<CellRef>()
  const [isByKey, setByKey] = useState(true)
  const look = useLook(body, view.panel?.formId, beads)
  const { lattice, scene } = useLattice(view, look, picture)
  const onHover = useCallback(
    (cell: CellRef) => setHovered((before) => (sameCell(before, cell) ? before : cell)),
    [],
  )
  const tool = usePointerTool({ model, tool: view.tool, lattice, picture, onHover })
  const { cell, selection, chart, moved } = view
  const lines = useMirrorLines(view, lattice)
  const crosshair = isByKey ? cell : undefined
  const layers = useMemo(
    () => [
      ...(lines === undefined ? [] : [mirrorLayer(lines)]),
      ...(selection === undefined ? [] : [selectionLayer(lattice, selection)]),
      ...(crosshair === undefined ? [] : [crosshairLayer(lattice, crosshair)]),
    ],
    [lattice, lines, selection, crosshair],
  )
  // Only after a key: before, the picture has yet to be fitted to its frame.
  const hasKeyed = useRef(false)
  useEffect(() => {
    if (!hasKeyed.current || picture.current === null) return
    keepInSight(picture.current, lattice, cell)
  }, [lattice, cell])

  function onKeyDown(event: KeyboardEvent): void {
    if (!answerPictureKey(model, event)) return
    event.preventDefault()
    hasKeyed.current = true
    setByKey(true)
  }
  const seen = isByKey || view.isDrawing ? cell : (hovered ?? cell)
  // A hand on the mouse sees where it is; speaking every bead it passes would drown what was done.
  const spoken = isByKey
    ? `${view.told === '' ? '' : `${view.told}. `}${tellCell(chart, plus(cell, moved), beads)}`
    : view.told
  return (
    <div className="table-stage">
      {/* biome-ignore lint/a11y/noStaticElementInteractions: it only notes which hand is at work */}
      <div
        className="table-picture"
        onPointerDown={() => {
          hasKeyed.current = false
          setByKey(false)
        }}
        onPointerLeave={() => setHovered(undefined)}
        onKeyUp={(event) => {
          if (event.key === 'Shift') model.release()
        }}
        onBlur={() => model.release()}
      >
        <BeadPicture
          ref={picture}
          role="application"
          scene={scene}
          label={`${name}, ${view.panel?.name ?? 'no panel'}, drawing table`}
          description={`${stitchName(chart.stitch)}. Arrow keys move the crosshair, Space uses the tool, Shift with arrows draws, question mark lists all keys.`}
          layers={layers}
          tool={tool}
          onKeyDown={onKeyDown}
        />
      </div>
      <div className="table-foot">
        <p className="table-place tabular" aria-hidden="true">
          {tellCell(chart, plus(seen, moved), beads)}
        </p>
        <p className="table-told" aria-hidden="true">
          {view.told}
        </p>
        <p className="unseen" aria-live="polite">
          {spoken}
        </p>
      </div>
    </div>
  )
}

const wholeView = (view: TableView) => view

/** The lines of the mirror; the same as before while they lie where they did. */
function useMirrorLines({ mirror, chart, moved }: TableView, lattice: Lattice) {
  const lines = mirrorLines(mirror, lattice, chart, moved)
  const isOn = lines !== undefined
  const { xMm, yMm } = lines ?? {}
  return useMemo(() => (isOn ? { xMm, yMm } : undefined), [isOn, xMm, yMm])
}

function useLook(
  body: DesignBody,
  formId: string | undefined,
  beads: readonly SlotBead[],
): LatticeLook {
  const { threadId } = body
  const tables = useBeadTables()
  return useMemo(() => {
    const form = findForm(tables, formId ?? '') ?? tables.forms[0]
    if (form === undefined) throw new Error('expected a bead form in the tables')
    const thread = findThread(tables, threadId)?.diameterMm.value ?? 0
    const forms = beads.map(({ slot }) => findForm(tables, slot.formId) ?? form)
    return {
      form,
      threadMm: threadGapMm(thread),
      palette: beads.map(({ hex, finish }, at) => ({
        hex,
        finish,
        family: forms[at]?.family ?? form.family,
      })),
      boxOfSlot: forms.some((one) => one !== form)
        ? forms.map((one) => ({
            widthMm: one.diameterMm.value,
            heightMm: one.lengthMm.value,
          }))
        : undefined,
    }
  }, [tables, formId, threadId, beads])
}
