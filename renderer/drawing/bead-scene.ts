import type { BeadLook, HoleAxis } from './bead-look.ts'
import type { SizeMm } from './view.ts'

/**
 * Beads to draw: where each lies and which slot fills it. Arrays over beads in the order of bead
 * numbers; positions are centres in mm, y down, origin at the left and top of the work.
 *
 * A brush changes `slotOf` alone, in place or in a new array: give `{ ...scene, slotOf }` and only the beads
 * that differ from what is painted are painted again. A place whose slot is not in the palette is empty.
 */
export type BeadScene = Readonly<{
  xMm: Float32Array
  yMm: Float32Array
  slotOf: Uint16Array
  /** Look of each slot, by its index. */
  palette: readonly BeadLook[]
  widthMm: number
  heightMm: number
  /** Box of a bead that lies as `axis` says. */
  beadWidthMm: number
  beadHeightMm: number
  /** The same by slot, where slots take forms of different sizes. */
  boxOfSlot?: readonly SizeMm[] | undefined
  axis: HoleAxis
  /** What a thread keeps open between beads along the hole, mm; closed where beads are only colour. */
  gapMm?: number | undefined
  /** 1 for beads that lie the other way than `axis`: right-angle weave. */
  turnedOf?: Uint8Array | undefined
  /** Lean in radians clockwise: herringbone. */
  leanOf?: Float32Array | undefined
  /** The neighbour that a visible thread goes over to, or -1: the next across where holes stand, the next down where they lie. */
  nextOf?: Int32Array | undefined
  /** Whether empty places are outlined, where they are large enough to be met by a hand. */
  showsPlaces?: boolean | undefined
  /** Straight threads under the beads, x1 y1 x2 y2 in mm: the warps of a loom. */
  lines?: Float32Array | undefined
}>

/** Greatest half width and half height any bead of the scene takes, mm. */
export function beadReach(scene: BeadScene): Readonly<{ xMm: number; yMm: number }> {
  const { beadWidthMm, beadHeightMm, boxOfSlot = [] } = scene
  const width = boxOfSlot.reduce((most, { widthMm }) => Math.max(most, widthMm), beadWidthMm)
  const height = boxOfSlot.reduce((most, { heightMm }) => Math.max(most, heightMm), beadHeightMm)
  const isMixed = scene.turnedOf !== undefined || scene.leanOf !== undefined
  const greatest = Math.max(width, height)
  return isMixed ? { xMm: greatest / 2, yMm: greatest / 2 } : { xMm: width / 2, yMm: height / 2 }
}
