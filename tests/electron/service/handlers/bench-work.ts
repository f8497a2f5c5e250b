import type { CallInput } from '../../../../shared-core/contract/calls.ts'
import { TODAY } from '../open-studio.ts'
import type { SmallWorkshop } from '../small-workshop.ts'
import { what } from './what-is-made.ts'

/** Begins work on some units; the id of the work. */
export async function begin(shop: SmallWorkshop, units: number, more: object = {}) {
  const input = { ...what(shop), units, begunOn: TODAY, before: {}, ...more }
  return (await shop.studio.ask('bench.begin', input as CallInput<'bench.begin'>)).id
}

/** The hand's place in the work, a minute a step. */
export const kept = (id: string, step: number, more: object = {}) => ({
  ...{ id, place: { copy: 1, part: 0, step }, workedS: 60 * step, unitsDone: 0, resting: false },
  ...more,
})

/** Finished work of which nothing was measured. */
export const bare = (id: string, units: number) => ({ id, units, culls: {}, weights: [] })

/** Where and when finished work goes to the shelf. */
export const ending = (shop: SmallWorkshop) => ({ placeId: shop.placeId, madeOn: TODAY, note: '' })

/** A material with its movements. */
export async function stockOf({ studio }: SmallWorkshop, id: string) {
  const { material, movements } = await studio.ask('materials.read', { id })
  return { ...material, movements }
}
