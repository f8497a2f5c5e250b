/** Demand and lead time of a material, both about their means: per period, and in the same periods. */
export type LeadTimeDemand = Readonly<{
  demandPerPeriod: number
  demandSd: number
  leadPeriods: number
  leadSd: number
}>

/** When to order: `reorderPoint` = demand over the lead time + `safetyStock`; in the material's unit, not rounded. */
export type ReorderPoint = Readonly<{
  leadDemand: number
  sigma: number
  safetyStock: number
  reorderPoint: number
}>

/**
 * The stock at which to order, so that a cycle ends without running out with the probability behind `z`.
 *
 * d L + z sqrt(L sd^2 + d^2 sL^2), for demand and lead time independent and their product about
 * normal. Lumpy demand is not: then the figure is a guide, and the demand class says so.
 *
 * @param z quantile of the cycle service level (`normalQuantile`), not of the fill rate
 * @source J. Heizer, B. Render, Operations Management, inventory chapter, both demand and lead time variable
 * @example 30 a day +- 3, 7 days +- 4, z 1.28 -> 210 + 153.94
 */
export function reorderPoint(demand: LeadTimeDemand, z: number): ReorderPoint {
  const { demandPerPeriod, demandSd, leadPeriods, leadSd } = demand
  const leadDemand = demandPerPeriod * leadPeriods
  const sigma = Math.sqrt(leadPeriods * demandSd ** 2 + demandPerPeriod ** 2 * leadSd ** 2)
  const safetyStock = z * sigma
  return { leadDemand, sigma, safetyStock, reorderPoint: leadDemand + safetyStock }
}
