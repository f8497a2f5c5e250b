import type { Proof } from './place-most.ts'

/** What a lot gives: `quantity` in the material's unit; `units` of whole shares where lots matter. */
export type LotDraw = Readonly<{ lotId: string; quantity: number; units?: number }>

/** The order line that asks: as many shares as it has units. */
export type Asking = Readonly<{ lineId: string; units: number }>

/** What an order line with reservations asks of one material: `units` shares of `perUnit` each. */
export type Demand = Asking & Readonly<{ perUnit: number }>

/**
 * What a material can do for a demand beside all earlier ones, quantities in its unit.
 *
 * `units` it allows and `upperBound` as in `Proof`; `short` to allow all of them; `open` is what no
 * other line and nothing outside the orders holds.
 */
export type Answer = Readonly<{
  units: number
  upperBound: number
  proof: Proof
  short: number
  open: number
}>

/** One material's stock as it is promised away, line by line, in order of promise; each line asks once. */
export type MaterialStock = Readonly<{
  /** What the stock allows of shares of `perUnit`; changes nothing. The answer is good until the next is asked. */
  ask(line: Asking, perUnit: number): Answer
  /** Holds stock for the line asked last: all it allows, or only what `units` of it take. */
  hold(line: Asking, perUnit: number, units: number | 'all'): void
  /** The lots of what each line holds, once every line has been asked; worked out once, when first asked. */
  draws(): ReadonlyMap<string, readonly LotDraw[]>
  /** What all lines together hold of each lot, in the order of the lots given; far cheaper than `draws`. */
  held(): readonly number[]
}>
