import type { StitchKind } from './chart.ts'

/** Which way a bead's hole runs, seen from the front. */
export type HoleAxis = 'vertical' | 'horizontal'

/** What a stitch's geometry is made from, all in mm. */
export type BeadSize = Readonly<{
  /** Across the hole. */
  diameterMm: number
  /** Along the hole. */
  lengthMm: number
  /** What a thread takes up between two beads, see `threadGapMm`; 0 for beads that touch. */
  threadMm: number
}>

/**
 * The lattice a stitch lays its beads on, in mm, y down, origin at the chart's left and top.
 *
 * A bead's centre is `leftMm + at * halfMm` across and `topMm + row * downMm` down, in peyote
 * `dropMm` lower in odd columns.
 */
export type StitchPitch = Readonly<{
  stitch: StitchKind
  size: BeadSize
  halfMm: number
  downMm: number
  leftMm: number
  topMm: number
  dropMm: number
  /** How far a bead leans from its hole axis; herringbone only. */
  leanRad: number
}>

/**
 * Lean of a herringbone bead towards its partner: 15 degrees, chosen by us for the picture. The
 * ladder a herringbone stands on holds its pitch at one diameter, so the lean costs no width.
 */
const HERRINGBONE_LEAN_RAD = Math.PI / 12

/**
 * The pitch of a stitch for a bead size.
 *
 * - brick: holes upright; d across, l plus the thread bridge down, odd rows half a bead out of step.
 * - ladder: holes upright; d across, l down where beads are stacked.
 * - peyote: holes across; l across, d down, odd columns d/2 lower (width columns x l, length rows x d).
 * - square: holes across; l across, d down. Loom: the same, and a warp between columns and at both edges.
 * - herringbone: holes upright, leaning in pairs; d across, l plus the pair's bridge down.
 * - right-angle weave: beads meet at the corners of units, so a unit is l + d each way; half of it from
 *   a bead that lies to one that stands.
 *
 * @source Trade practice: flat peyote is columns x L wide and half its trade rows x D long; brick is
 *   beads x D wide and rows x L high; square and loom are columns x (L + thread) wide and rows x D
 *   high. Right-angle weave from the geometry of four beads ringed edge to edge.
 */
export function stitchPitch(stitch: StitchKind, size: BeadSize): StitchPitch {
  const { diameterMm: d, lengthMm: l, threadMm: t } = size
  const base = { stitch, size, dropMm: 0, leanRad: 0 }
  const upright = { ...base, halfMm: d / 2, leftMm: d / 2, topMm: l / 2 }
  const across = { ...base, downMm: d, topMm: d / 2 }
  switch (stitch) {
    case 'brick':
      return { ...upright, downMm: l + t }
    case 'ladder':
      return { ...upright, downMm: l }
    case 'herringbone':
      return { ...upright, downMm: l + t, leanRad: HERRINGBONE_LEAN_RAD }
    case 'peyote':
      return { ...across, halfMm: l / 2, leftMm: l / 2, dropMm: d / 2 }
    case 'square':
      return { ...across, halfMm: l / 2, leftMm: l / 2 }
    case 'loom':
      return { ...across, halfMm: (l + t) / 2, leftMm: t + l / 2 }
    case 'right-angle-weave':
      return { ...base, halfMm: (l + d) / 2, downMm: (l + d) / 2, leftMm: d / 2, topMm: d / 2 }
  }
}

/** The way the hole runs in a row: across in peyote, square and loom and in every second row of right-angle weave. */
export function holeAxis(stitch: StitchKind, row: number): HoleAxis {
  if (stitch === 'right-angle-weave') return row % 2 === 0 ? 'horizontal' : 'vertical'
  return stitch === 'peyote' || stitch === 'square' || stitch === 'loom' ? 'horizontal' : 'vertical'
}

/** A bead's box in mm before it leans: diameter by length, turned by its hole axis. */
export function beadBox(
  { stitch, size }: StitchPitch,
  row: number,
): Readonly<{ widthMm: number; heightMm: number }> {
  return holeAxis(stitch, row) === 'horizontal'
    ? { widthMm: size.lengthMm, heightMm: size.diameterMm }
    : { widthMm: size.diameterMm, heightMm: size.lengthMm }
}

/** How a bead is turned from its hole axis, in radians clockwise: herringbone pairs lean together at the top. */
export function beadTilt({ leanRad }: StitchPitch, at: number): number {
  return isOddColumn(at) ? -leanRad : leanRad
}

/** Centre of a cell in mm. */
export function cellCentre(
  pitch: StitchPitch,
  row: number,
  at: number,
): Readonly<{ xMm: number; yMm: number }> {
  const drop = isOddColumn(at) ? pitch.dropMm : 0
  return { xMm: pitch.leftMm + at * pitch.halfMm, yMm: pitch.topMm + row * pitch.downMm + drop }
}

/**
 * The centres of a row's cells in closed form, mm: cell `i` lies at `xMm + i * stepMm` across, down at
 * `evenMm` where `i` is even and at `oddMm` where it is odd (they differ in peyote alone).
 */
export type RowCentres = Readonly<{ xMm: number; stepMm: number; evenMm: number; oddMm: number }>

/** The centres of the cells of a row that begins at half-bead position `start`. */
export function rowCentres(pitch: StitchPitch, row: number, start: number): RowCentres {
  const first = cellCentre(pitch, row, start)
  const second = cellCentre(pitch, row, start + 2)
  return { xMm: first.xMm, stepMm: 2 * pitch.halfMm, evenMm: first.yMm, oddMm: second.yMm }
}

/** Whether a half-bead position lies in an odd column (the lower ones in peyote, the right of a herringbone pair). */
export function isOddColumn(at: number): boolean {
  return (at & 2) !== 0
}

/**
 * What a thread takes up between two beads: 0.65 of its diameter, because it is squeezed flat.
 *
 * @param diameterMm - Thread as sold, mm.
 * @source Two observations agree for 6 lb braid of 0.17 mm: loom rods of 18 grooves to the inch fit
 *   11/0 cylinders of 1.3 mm (1.41 - 1.30 = 0.11), and real brick work counts 285 beads per square
 *   inch where touching beads would count 310 (1.3 x (310 / 285 - 1) = 0.11).
 */
export function threadGapMm(diameterMm: number): number {
  return 0.65 * diameterMm
}
