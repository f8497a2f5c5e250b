import { type KeyboardEvent, type PointerEvent, type RefObject, useMemo, useState } from 'react'
import { buildGrid } from '../../../drawing/bead-grid.ts'
import { highlightLayer } from '../../../drawing/layers/highlight-layer.ts'
import type { OverlayLayer } from '../../../drawing/overlay.ts'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import type { Assembly } from '../assembly/assemble.ts'
import { beadAt } from './bead-at.ts'

/** The bead that is pointed at or gone to by keys, ringed, and how to move from it. */
export type ToldBead = Readonly<{
  bead: number
  layers: readonly OverlayLayer[]
  onPointerMove: (event: PointerEvent) => void
  onPointerLeave: () => void
  /** `n` and `p` go to the next and the previous bead. */
  onKeyDown: (event: KeyboardEvent) => void
}>

const NO_LAYERS: readonly OverlayLayer[] = []

/** Follows the pointer or the keys from bead to bead. */
export function useToldBead(
  assembly: Assembly,
  picture: RefObject<PictureHandle | null>,
): ToldBead {
  const [bead, setBead] = useState(-1)
  const { scene } = assembly
  const { xMm, yMm } = scene
  // biome-ignore lint/correctness/useExhaustiveDependencies: the grid depends on places alone
  const grid = useMemo(() => buildGrid(scene), [xMm, yMm])
  const layers = useMemo(
    () => (bead < 0 || bead >= xMm.length ? NO_LAYERS : [highlightLayer([bead])]),
    [bead, xMm],
  )
  return {
    bead: bead < xMm.length ? bead : -1,
    layers,
    onPointerMove: (event) => {
      const point = picture.current?.pointAt(event)
      if (point !== undefined && event.buttons === 0) setBead(beadAt(scene, grid, point))
    },
    onPointerLeave: () => setBead(-1),
    onKeyDown: (event) => {
      const step = { n: 1, p: -1 }[event.key]
      if (step === undefined || event.ctrlKey || event.metaKey || event.altKey) return
      event.preventDefault()
      setBead((bead + step + xMm.length) % xMm.length)
    },
  }
}
