import type { Proof } from './place-most.ts'

/** What a lot gives: `quantity` in the material's unit; `units` of whole shares where lots matter. */
export type LotDraw = Readonly<{ lotId: string; quantity: number; units?: number }>

/** What one order line asks of one material: `units` shares of `perUnit` each. */
export type Demand = Readonly<{ lineId: string; units: number; perUnit: number }>

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

/** One material's stock as it is promised away, demand by demand, in order of promise. */
export type MaterialStock = Readonly<{
  /** What the stock allows for a demand; changes nothing. */
  ask(demand: Demand): Answer
  /** Holds stock for the demand asked last: all it allows, or only what `units` of it take. Returns its place in `draws`. */
  hold(demand: Demand, units: number | 'all'): number
  /** The lots of each holding, once every demand has been held; worked out once, when first asked. */
  draws(): readonly (readonly LotDraw[])[]
  /** What all holdings together take of each lot, in the order of the lots given; far cheaper than `draws`. */
  held(): readonly number[]
}>
