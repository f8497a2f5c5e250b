import { useMemo } from 'react'
import { findForm } from '../../../../shared-core/beads/bead-tables.ts'
import type { PlacedLine, ReaderMap } from '../../../../shared-core/bench/reader-place.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import { highlightLayer } from '../../../drawing/layers/highlight-layer.ts'
import type { Assembly } from '../../designs/assembly/assemble.ts'
import { bridgeLayer } from './bridge-layer.ts'
import { beadsInPicture, firstBead, madeBeads, mirrorScene } from './piece-beads.ts'
import { rowView } from './row-view.ts'
import { StillPicture } from './still-picture.tsx'
import { strandScene } from './strand-scene.ts'
import { holesAt } from './tell-holes.ts'
import { lineName, lineSlots } from './tell-line.ts'
import { BEHIND, CLEAR, washLayer } from './wash-layer.ts'
import { wayLayer } from './way-layer.ts'

type LinePictureProps = Readonly<{
  placed: PlacedLine
  step: number | undefined
  map: ReaderMap
  body: DesignBody
  assembly: Assembly | undefined
  looks: readonly BeadLook[]
}>

/** The beads of the line in hand, near: a row among its neighbours, a strand laid across. */
export function LinePicture(props: LinePictureProps) {
  const { placed, assembly } = props
  const slots = useMemo(() => lineSlots(placed.line), [placed.line])
  if (slots.length === 0) return null
  if (placed.line.kind === 'strand') return <StrandPicture {...props} slots={slots} />
  return assembly === undefined ? null : <RowPicture {...props} assembly={assembly} />
}

function RowPicture({
  placed,
  step,
  map,
  assembly,
}: LinePictureProps & Readonly<{ assembly: Assembly }>) {
  const { line, piece, stretch } = placed
  const scene = useMemo(
    () => (piece.isMirrored ? mirrorScene(assembly.scene) : assembly.scene),
    [assembly, piece.isMirrored],
  )
  const beads = useMemo(() => beadsInPicture(assembly, placed), [assembly, placed])
  const viewOf = useMemo(() => rowView(scene, beads), [scene, beads])
  const layers = useMemo(() => {
    const levels = madeBeads(assembly, map, piece, placed.from).map((level) => level || BEHIND)
    const lit = step === undefined ? beads : beadsInPicture(assembly, placed, step, step + 1)
    const shown = step === undefined ? beads : beadsInPicture(assembly, placed, 0, step + 1)
    for (const bead of shown) levels[bead] = CLEAR
    const first = firstBead(assembly, stretch)
    const holes = holesAt(line, step)
      .filter(({ partId }) => partId === stretch.partId)
      .map(({ bead }) => first + bead)
    const bridges = line.steps.flatMap((one) => one.bridges)
    const litBridges = step === undefined ? [] : (line.steps[step]?.bridges ?? [])
    return [
      washLayer(levels),
      highlightLayer(lit),
      highlightLayer(holes, 'warn'),
      bridgeLayer(bridges, litBridges, {
        beadOf: (bead) => first + bead,
        rowBead: beads[0] ?? 0,
      }),
      wayLayer(beads[0] ?? 0, line.side === 'right'),
    ]
  }, [assembly, map, piece, placed, line, stretch, beads, step])
  return (
    <StillPicture
      className="reader-row-picture"
      scene={scene}
      layers={layers}
      viewOf={viewOf}
      label={`${lineName(placed)} as it lies on the work`}
    />
  )
}

function StrandPicture({
  placed,
  body,
  looks,
  slots,
}: LinePictureProps & Readonly<{ slots: readonly number[] }>) {
  const tables = useBeadTables()
  const scene = useMemo(
    () => strandScene(slots, looks, (slot) => findForm(tables, body.palette[slot]?.formId ?? '')),
    [slots, looks, body, tables],
  )
  const layers = useMemo(() => [wayLayer(0, false)], [])
  const viewOf = useMemo(() => {
    const all = slots.map((_, bead) => bead)
    return rowView(scene, all)
  }, [scene, slots])
  return (
    <StillPicture
      className="reader-row-picture"
      scene={scene}
      layers={layers}
      viewOf={viewOf}
      label={`${lineName(placed)}, the way it is strung`}
    />
  )
}
