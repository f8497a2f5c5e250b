/** Stock to be valued, all of one item, in minor units. */
export type ValuedItem = Readonly<{
  costMinor: number
  /** What it is expected to sell for, before tax. */
  priceMinor: number
  /** What finishing it still costs. */
  completionMinor: number
  /** What selling it costs: fees, commission. */
  sellingMinor: number
}>

/** What stock stands in the books at, and what was written off. `carrying + writeDown = cost`. */
export type Carrying = Readonly<{ carryingMinor: number; writeDownMinor: number }>

/**
 * Net realisable value: expected price less the cost to complete and the cost to sell; may be below 0.
 *
 * @source IAS 2, paragraph 6
 */
export function netRealisableValue(item: Omit<ValuedItem, 'costMinor'>): number {
  return item.priceMinor - item.completionMinor - item.sellingMinor
}

/**
 * The lower of cost and net realisable value, item by item, never below 0.
 *
 * @source IAS 2, paragraphs 9 and 28 to 30
 * @example cost 4.00, price 5.62, 1.80 to finish -> carried at 3.82, 0.18 written down
 */
export function lowerOfCostAndNrv(item: ValuedItem): Carrying {
  const carryingMinor = Math.min(item.costMinor, Math.max(0, netRealisableValue(item)))
  return { carryingMinor, writeDownMinor: item.costMinor - carryingMinor }
}

/**
 * What a material kept for making stands at: its cost while the finished piece recovers its own
 * cost, else the lower of cost and replacement cost.
 *
 * @source IAS 2, paragraph 32
 */
export function materialCarrying(
  material: Readonly<{ costMinor: number; replacementMinor: number }>,
  finished: ValuedItem,
): Carrying {
  const recovers = netRealisableValue(finished) >= finished.costMinor
  const carryingMinor = recovers
    ? material.costMinor
    : Math.min(material.costMinor, material.replacementMinor)
  return { carryingMinor, writeDownMinor: material.costMinor - carryingMinor }
}

/**
 * What is taken back of an earlier write-down when value has risen: up to cost, never beyond, and
 * never a further write-down.
 *
 * @source IAS 2, paragraph 33
 * @example cost 100, carried at 80, now worth 120 -> carried at 100, 20 taken back
 */
export function reversalOfWriteDown(
  held: Readonly<{ costMinor: number; carryingMinor: number; nrvMinor: number }>,
): Readonly<{ carryingMinor: number; reversalMinor: number }> {
  const carryingMinor = Math.max(held.carryingMinor, Math.min(held.costMinor, held.nrvMinor))
  return { carryingMinor, reversalMinor: carryingMinor - held.carryingMinor }
}
