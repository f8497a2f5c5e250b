/**
 * Smallest ratio of hole to strand diameter at which n equal strands lie in a round hole, n from 1.
 *
 * @source E. Specht's table of equal circles in a circle; Graham, Lubachevsky, Nurmela and Östergård,
 *   Discrete Mathematics 181 (1998). Proved for 1 to 13 and 19, best known for the others.
 */
export const HOLE_TO_STRAND: readonly number[] = [
  1, 2, 2.1547005383792515, 2.414213562373095, 2.7013016167040798, 3, 3, 3.3047648709624866,
  3.613125929752753, 3.8130256313981246, 3.923804400163087, 4.029601930116184, 4.23606797749979,
  4.328428554860837, 4.521356964706164, 4.615425594873194, 4.792033748310579, 4.863703305156273,
  4.863703305156273, 5.1223207369915285,
]

/** How many circles fit: exact up to 20, bounded from both sides beyond. */
export type CircleCount = Readonly<{ atLeast: number; atMost: number }>

// A hole of 0.9 mm over a strand of 0.3 mm is 3 in decimals but not quite in binary.
const ROUNDING = 1e-9

/**
 * How many strands of one diameter lie side by side in a round hole.
 *
 * Up to 20 by the table of best packings; beyond, `atLeast` counts a hexagonal lattice laid in the
 * hole and `atMost` is Oler's bound, N <= 2A/sqrt(3) + P/2 + 1, on the disc of strand centres.
 *
 * @param holeMm - Hole's diameter, mm, 0 or more.
 * @param strandMm - Strand's diameter, mm, above 0.
 * @throws RangeError for a negative hole or a strand without thickness: a bug in the caller.
 */
export function circlesThatFit(holeMm: number, strandMm: number): CircleCount {
  if (!(holeMm >= 0) || !(strandMm > 0)) {
    throw new RangeError(`circlesThatFit: expected a hole and a strand, got ${holeMm}, ${strandMm}`)
  }
  const ratio = holeMm / strandMm + ROUNDING
  const fitting = HOLE_TO_STRAND.findLastIndex((needed) => needed <= ratio) + 1
  if (fitting < HOLE_TO_STRAND.length) return { atLeast: fitting, atMost: fitting }
  return { atLeast: Math.max(fitting, latticeCount(ratio - 1)), atMost: olerBound(ratio - 1) }
}

/** Oler's bound for points at least 1 apart in a disc of this diameter. */
function olerBound(disc: number): number {
  const area = (Math.PI * disc * disc) / 4
  return Math.floor((2 / Math.sqrt(3)) * area + (Math.PI * disc) / 2 + 1)
}

/** Points of a unit hexagonal lattice in a disc, the best of three centrings: point, edge, triangle. */
function latticeCount(disc: number): number {
  const rise = Math.sqrt(3) / 2
  const centrings = [
    [0, 0],
    [0.5, 0],
    [0.5, rise / 3],
  ] as const
  const reach = Math.ceil(disc / 2 / rise) + 1
  const rows = Array.from({ length: 2 * reach + 1 }, (_, index) => index - reach)
  const counts = centrings.map(([x, y]) =>
    rows.reduce((sum, row) => sum + pointsInChord(disc / 2, row * rise - y, x - row / 2), 0),
  )
  return Math.max(...counts)
}

/** Whole-numbered points, shifted by `shift`, on the chord of a circle at height `y`. */
function pointsInChord(radius: number, y: number, shift: number): number {
  if (Math.abs(y) > radius) return 0
  const half = Math.sqrt(radius * radius - y * y)
  return Math.max(0, Math.floor(shift + half) - Math.ceil(shift - half) + 1)
}
