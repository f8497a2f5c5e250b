import type { Circumstances } from '../perform.ts'
import type { View } from '../store/view.ts'
import { sampleMaterials } from './materials.ts'
import { type SampleIds, setUpSample } from './set-up.ts'
import { type StoryStep, sampleStory } from './story.ts'
import { tellStep } from './tell-step.ts'
import { openTeller, saturdayNear, type Teller } from './teller.ts'

type Event = Readonly<{ daysAgo: number; happen: () => Promise<void> }>

/**
 * Fills a new workshop with Saltmarsh Beadworks: its drawers, its designs and its past months.
 *
 * All of it goes through the acts of the contract, so that the ledgers are true; none of it can be
 * undone, because a sample is where one begins.
 */
export async function tellSample(
  view: View,
  today: string,
  circumstances: Circumstances,
): Promise<void> {
  const teller = openTeller(view, today, circumstances)
  const ids = await setUpSample(teller)
  const orders = new Map<string, string>()
  const events: Event[] = [
    ...arrivals(teller, ids),
    ...sampleStory.map((written) => {
      const step = onMarketDay(teller, written)
      return { daysAgo: step.daysAgo, happen: () => tellStep({ teller, ids, orders }, step) }
    }),
  ]
  // What comes first on a day stands first in the list.
  for (const { happen } of events.toSorted((a, b) => b.daysAgo - a.daysAgo)) await happen()
}

/** The market is on Saturdays, whatever day the sample begins on. */
function onMarketDay(teller: Teller, step: StoryStep): StoryStep {
  return step.kind === 'sell' && step.channel === 'market'
    ? { ...step, daysAgo: saturdayNear(teller, step.daysAgo) }
    : step
}

function arrivals({ tell, day }: Teller, ids: SampleIds): readonly Event[] {
  return sampleMaterials.flatMap((material) =>
    material.lots.map(([dyeLot, quantity, daysAgo, packCost]) => ({
      daysAgo,
      happen: async () => {
        await tell(daysAgo, 'lots.receive', {
          materialId: ids.materials.get(material.code) ?? '',
          quantity,
          dyeLot,
          supplierId: ids.suppliers.get(material.supplier) ?? null,
          boughtOn: day(daysAgo),
          costMinor: packCost,
          note: '',
        })
      },
    })),
  )
}
