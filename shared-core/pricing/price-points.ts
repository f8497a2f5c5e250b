import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'

/**
 * The prices a maker likes to ask, in minor units.
 *
 * - `any`: every price.
 * - `every`: multiples of a step: 100 for whole euros, 500 for fives.
 * - `endings`: prices that end so: endings 0, 50 and 95 in every 100.
 * - `list`: these prices only.
 */
export type PricePoints =
  | Readonly<{ kind: 'any' }>
  | Readonly<{ kind: 'every'; stepMinor: number }>
  | Readonly<{ kind: 'endings'; endingsMinor: readonly number[]; everyMinor: number }>
  | Readonly<{ kind: 'list'; pricesMinor: readonly number[] }>

/** Which neighbouring price point is taken; `nearest` takes the higher of two as near. */
export type PointDirection = 'up' | 'down' | 'nearest'

/** How a price is brought to a price point. */
export type PointRule = Readonly<{
  points: PricePoints
  direction: PointDirection
  /** The lowest price that loses no money; the point is never below it unless told. */
  floorMinor: number
  belowFloor: 'never' | 'allowed'
}>

/**
 * The maker's price point for a price.
 *
 * Never below the floor unless `belowFloor` is `allowed`: then the next point up is taken instead.
 * Where there is none below, the next one up is taken; where a list ends, the refusal says so.
 * Refusals: `no-price-point`, `bad-price-points`.
 */
export function roundToPricePoint(priceMinor: number, rule: PointRule): Result<number, Refusal> {
  if (!arePossible(rule.points)) return err(BAD_POINTS)
  const chosen = neighbour(priceMinor, rule)
  const tooLow = chosen !== undefined && rule.belowFloor === 'never' && chosen < rule.floorMinor
  const point = tooLow ? pointAtOrAbove(rule.floorMinor, rule.points) : chosen
  return point === undefined ? err(NO_POINT) : ok(point)
}

/** The lowest price point that is not below the price; undefined where a list ends before. */
export function pointAtOrAbove(priceMinor: number, points: PricePoints): number | undefined {
  switch (points.kind) {
    case 'any':
      return priceMinor
    case 'every':
      return Math.ceil(priceMinor / points.stepMinor) * points.stepMinor
    case 'endings':
      return smallest(endingsAround(priceMinor, points).filter((at) => at >= priceMinor))
    case 'list':
      return smallest(points.pricesMinor.filter((at) => at >= priceMinor))
  }
}

/** The highest price point that is not above the price; undefined where there is none from 0 up. */
export function pointAtOrBelow(priceMinor: number, points: PricePoints): number | undefined {
  switch (points.kind) {
    case 'any':
      return priceMinor
    case 'every':
      return Math.floor(priceMinor / points.stepMinor) * points.stepMinor
    case 'endings':
      return largest(endingsAround(priceMinor, points).filter((at) => at <= priceMinor && at >= 0))
    case 'list':
      return largest(points.pricesMinor.filter((at) => at <= priceMinor))
  }
}

function neighbour(priceMinor: number, rule: PointRule): number | undefined {
  const above = pointAtOrAbove(priceMinor, rule.points)
  const below = pointAtOrBelow(priceMinor, rule.points)
  if (below === undefined || rule.direction === 'up') return above
  if (above === undefined || rule.direction === 'down') return below
  return above - priceMinor <= priceMinor - below ? above : below
}

type Endings = Extract<PricePoints, { kind: 'endings' }>

/** The endings in the turn the price lies in, and in the turns before and after it. */
function endingsAround(priceMinor: number, points: Endings): readonly number[] {
  const turn = Math.floor(priceMinor / points.everyMinor) * points.everyMinor
  return [turn - points.everyMinor, turn, turn + points.everyMinor].flatMap((start) =>
    points.endingsMinor.map((ending) => start + ending),
  )
}

function arePossible(points: PricePoints): boolean {
  switch (points.kind) {
    case 'any':
      return true
    case 'every':
      return isWhole(points.stepMinor, 1)
    case 'endings':
      return (
        isWhole(points.everyMinor, 1) &&
        points.endingsMinor.length > 0 &&
        points.endingsMinor.every((ending) => isWhole(ending, 0) && ending < points.everyMinor)
      )
    case 'list':
      return points.pricesMinor.length > 0 && points.pricesMinor.every((at) => isWhole(at, 0))
  }
}

function isWhole(value: number, least: number): boolean {
  return Number.isSafeInteger(value) && value >= least
}

function smallest(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : Math.min(...values)
}

function largest(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : Math.max(...values)
}

const NO_POINT: Refusal = {
  code: 'no-price-point',
  message: 'The list of price points ends below the price that is needed.',
  next: 'Add a higher price point to the list.',
}

const BAD_POINTS: Refusal = {
  code: 'bad-price-points',
  message: 'The price points are not usable.',
  next: 'Give a step from 1 up, endings within their step, or a list of at least one price.',
}
