import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { slotCalibrations } from '../../../../renderer/rooms/designs/reading/slot-calibrations.ts'
import { drawnMoney } from '../../../../renderer/rooms/designs/table/drawn-money.ts'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { readDesign } from '../../../../shared-core/design/read-design.ts'
import { openSampleStudio, type Studio, TODAY } from '../../../electron/service/open-studio.ts'

let studio: Studio
beforeAll(async () => {
  studio = await openSampleStudio()
})
afterAll(() => studio.close())

async function drawn(designId: string, colourwayId: string) {
  const { ask } = studio
  const { body, colourways, beadsPerGram } = await ask('designs.read', { id: designId })
  const materials = colourways.find(({ id }) => id === colourwayId)?.materials ?? {}
  const calibrations = slotCalibrations(body.palette, referenceTables, { materials, beadsPerGram })
  const { learned } = await ask('workshop.pace', {})
  const reading = readDesign(body, { ...referenceTables, ...learned, calibrations })
  if (!reading.ok) throw new Error(reading.error.message)
  return drawnMoney(await ask('drafts.stock', { designId, colourwayId }), reading.value, body)
}

describe('drawnMoney', () => {
  it('says of a drawing that is a version what the service says of the version', async () => {
    const { ask } = studio
    const { designs } = await ask('designs.list', {})
    expect(designs.length).toBeGreaterThan(5)
    for (const { id } of designs) {
      const { colourways } = await ask('designs.read', { id })
      for (const colourway of colourways) {
        const what = { designId: id, colourwayId: colourway.id }
        const { sheet, makeable } = await drawn(id, colourway.id)
        expect(sheet).toEqual((await ask('prices.sheet', what)).sheet)
        const draft = {
          customer: 'trial',
          dueOn: TODAY,
          promisedOn: TODAY,
          note: '',
          lines: [{ ...what, units: 10_000, priceMinor: null }],
        }
        const cover = await ask('orders.cover', { today: TODAY, order: { draft } })
        expect(makeable.units).toBe(cover.lines[0]?.coveredUnits)
      }
    }
  })
})
