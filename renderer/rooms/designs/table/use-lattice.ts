import { type RefObject, useLayoutEffect, useMemo, useRef } from 'react'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import {
  buildLattice,
  type Filled,
  fillLattice,
  hasRoom,
  type Lattice,
  type LatticeLook,
} from './lattice.ts'
import type { TableView } from './table-state.ts'

type Kept = Readonly<{ lattice: Lattice; look: LatticeLook; partId: string; stitch: string }>

/**
 * The places of the panel on the table and the scene that fills them. New places are laid out only
 * when the panel grows beyond them, and then the picture stays where it is.
 */
export function useLattice(
  { panel, chart, moved, isDrawing }: TableView,
  look: LatticeLook,
  picture: RefObject<PictureHandle | null>,
): Readonly<{ lattice: Lattice; scene: BeadScene }> {
  const kept = useRef<Kept>(undefined)
  const filled = useRef<Filled>(undefined)
  const partId = panel?.id ?? ''
  const lattice = useMemo(() => {
    const old = kept.current
    const isSame =
      old !== undefined &&
      old.partId === partId &&
      old.stitch === chart.stitch &&
      old.look.form === look.form &&
      old.look.threadMm === look.threadMm &&
      hasRoom(old.lattice, chart, moved, isDrawing ? 0 : 1)
    if (isSame) return old.lattice
    return buildLattice(chart, moved, look)
  }, [partId, chart, moved, look, isDrawing])
  if (kept.current?.lattice !== lattice) {
    kept.current = { lattice, look, partId, stitch: chart.stitch }
  }
  useSteadyPicture(lattice, partId, picture)
  const scene = useMemo(() => {
    filled.current = fillLattice(lattice, chart, moved, filled.current)
    return {
      ...lattice.scene,
      palette: look.palette,
      boxOfSlot: look.boxOfSlot,
      slotOf: filled.current.slotOf,
    }
  }, [lattice, chart, moved, look])
  return { lattice, scene }
}

/** Moves the view with the places, so that beads stay under the hand when new places are laid out. */
function useSteadyPicture(
  lattice: Lattice,
  partId: string,
  picture: RefObject<PictureHandle | null>,
): void {
  const before = useRef({ lattice, partId })
  const view = picture.current?.view()
  useLayoutEffect(() => {
    const { lattice: old, partId: oldPart } = before.current
    before.current = { lattice, partId }
    const handle = picture.current
    if (old === lattice || handle === null) return
    if (oldPart !== partId || old.pitch.stitch !== lattice.pitch.stitch || view === undefined) {
      handle.fit()
      return
    }
    const { pitch, origin } = lattice
    const across = (origin.at - old.origin.at) * pitch.halfMm
    const down = (origin.row - old.origin.row) * pitch.downMm
    handle.setView({ ...view, xMm: view.xMm + across, yMm: view.yMm + down })
  })
}
