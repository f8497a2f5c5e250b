import { allocate } from '../units/allocate.ts'

/** A lot that finished units were planned to draw from, and how much; above 0, in the material's unit. */
export type PlannedDraw = Readonly<{ lotId: string; quantity: number }>

/**
 * What is known of a bead's use by finished units, in the material's unit (mg, or pieces).
 *
 * `good` is what the finished units hold by their charts; `culled` what was put aside, where counted;
 * `used` the difference of two weighings of its tube, where it was weighed.
 */
export type KnownUse = Readonly<{ good: number; culled?: number; used?: number }>

/** One line to book: `quantity` above 0 leaves the lot, into pieces, as waste, or because the scale says so. */
export type BookedLine = Readonly<{
  lotId: string
  quantity: number
  kind: 'made' | 'waste' | 'weighed'
}>

/**
 * What leaves which lot for finished units: by the scale where it was weighed, else by the beads
 * counted, else as planned.
 *
 * The whole is exact: what was weighed, or good and culled beads together, or the plan. Culls stand as
 * waste, the pieces' own beads as made, and whatever the scale saw beyond both as weighed. Each kind is
 * shared between the lots as they were planned to be drawn.
 *
 * @param draws as planned; nothing is booked without them
 * @returns lines of whole quantities above 0, that sum to the whole
 * @example 1000 mg planned, 940 good, 30 culled, 1010 weighed -> made 940, waste 30, weighed 40
 */
export function bookUse(draws: readonly PlannedDraw[], use: KnownUse): readonly BookedLine[] {
  const planned = draws.map((draw) => draw.quantity)
  if (draws.length === 0) return []
  const whole = wholeOf(planned, use)
  const waste = Math.min(use.culled ?? 0, whole)
  const isPlan = use.used === undefined && use.culled === undefined
  const made = isPlan ? whole : Math.min(use.good, whole - waste)
  const kinds = [
    ['made', made],
    ['waste', waste],
    ['weighed', whole - waste - made],
  ] as const
  return kinds.flatMap(([kind, quantity]) =>
    allocate(quantity, planned).flatMap((share, at) =>
      share > 0 ? [{ lotId: draws[at]?.lotId ?? '', quantity: share, kind }] : [],
    ),
  )
}

function wholeOf(planned: readonly number[], { good, culled, used }: KnownUse): number {
  if (used !== undefined) return used
  if (culled !== undefined) return good + culled
  return planned.reduce((sum, quantity) => sum + quantity, 0)
}
