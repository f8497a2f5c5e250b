/** How demand comes: often or now and then, in like sizes or not. */
export type DemandClass = 'none' | 'smooth' | 'intermittent' | 'erratic' | 'lumpy'

/** `interval`: periods per demand; `sizeVariation`: squared coefficient of variation of the sizes (population). */
export type DemandPattern = Readonly<{
  kind: DemandClass
  interval: number
  sizeVariation: number
}>

/**
 * The class of a history of demand: interval cut at 1.32 periods, variation of size at 0.49.
 *
 * @param demand per period, 0 or more
 * @returns `none`, with zeros, for a history without demand
 * @source A. A. Syntetos, J. E. Boylan, J. D. Croston, Journal of the Operational Research Society 56 (2005), 495
 */
export function demandPattern(demand: readonly number[]): DemandPattern {
  const sizes = demand.filter((quantity) => quantity > 0)
  if (sizes.length === 0) return { kind: 'none', interval: 0, sizeVariation: 0 }
  const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length
  const variance = sizes.reduce((sum, size) => sum + (size - mean) ** 2, 0) / sizes.length
  const interval = demand.length / sizes.length
  const sizeVariation = variance / mean ** 2
  const isOften = interval < 1.32
  const isLike = sizeVariation < 0.49
  const kind = isOften ? (isLike ? 'smooth' : 'erratic') : isLike ? 'intermittent' : 'lumpy'
  return { kind, interval, sizeVariation }
}
