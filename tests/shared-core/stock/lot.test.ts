import * as fc from 'fast-check'
import { expect, test } from 'vitest'

import { byAge, type Lot, lotsByMaterial } from '../../../shared-core/stock/lot.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'

const days = fc.option(fc.constantFrom('2026-01-05', '2026-03-14', '2025-11-30'))
const lots = fc
  .array(fc.record({ materialId: fc.constantFrom('a', 'b'), day: days }), {
    maxLength: 60,
    size: 'max',
  })
  .map((drafts) =>
    drafts.map(
      ({ materialId, day }, at): Lot => ({
        lotId: `lot-${(at * 37) % 61}`,
        materialId,
        onHand: at,
        boughtOn: day === null ? null : calendarDate(day),
      }),
    ),
  )

test('lots of a material come oldest first, few or many, and none is lost', () => {
  fc.assert(
    fc.property(lots, (all) => {
      const sorted = lotsByMaterial(all)
      expect([...sorted.values()].flat()).toHaveLength(all.length)
      for (const [materialId, group] of sorted) {
        const own = all.filter((lot) => lot.materialId === materialId)
        expect(group).toEqual(own.toSorted(byAge))
      }
    }),
  )
})
