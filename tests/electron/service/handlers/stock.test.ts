import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { openEmptyStudio, TODAY } from '../open-studio.ts'
import { openSmallWorkshop, orderFor } from '../small-workshop.ts'

const file = {
  fileName: 'stock-list.csv',
  base64: readFileSync(
    new URL('../../../fixtures/samples/stock-list.csv', import.meta.url),
  ).toString('base64'),
}

describe('stockFile.import', () => {
  it('writes nothing while bad lines are not left out by name', async () => {
    const studio = await openEmptyStudio()
    for (const leaveOutLines of [[], [14], [16]]) {
      expect(await studio.refused('stockFile.import', { file, leaveOutLines })).toMatchObject({
        code: 'bad-rows',
        field: 'leaveOutLines',
      })
    }
    expect((await studio.ask('materials.list', {})).materials).toEqual([])
    await studio.close()
  })

  it('writes materials, lots, suppliers and packs in one step', async () => {
    const studio = await openEmptyStudio()
    expect(await studio.ask('stockFile.import', { file, leaveOutLines: [14, 16] })).toEqual({
      materials: 12,
      lots: 13,
      suppliers: 3,
      leftOut: 2,
    })
    const { materials } = await studio.ask('materials.list', {})
    const byCode = new Map(materials.map((material) => [material.code, material]))
    const slate = byCode.get('WS-11-04')
    expect(slate).toMatchObject({ lots: 2, onHand: 24_550, unit: 'mg', lotsMatter: true })
    expect(byCode.get('MB-11-09')).toMatchObject({ lots: 1, onHand: 0, alert: 'unweighed' })
    expect(byCode.get('TH-06')).toMatchObject({ unit: 'mm', onHand: 0, alert: 'unweighed' })
    expect(byCode.get('EW-01')?.declaration).toContain('Nickelabgabe')
    const { lots, offers } = await studio.ask('materials.read', { id: slate?.id ?? '' })
    expect(lots.map(({ dyeLot, onHand }) => [dyeLot, onHand])).toEqual([
      ['K17', 18_450],
      ['K22', 6_100],
    ])
    // The later price stands.
    expect(offers).toMatchObject([{ packQuantity: 7_200, priceMinor: 435 }])
    await studio.close()
  })

  it('does not take the same stock in twice', async () => {
    const studio = await openEmptyStudio()
    await studio.ask('stockFile.import', { file, leaveOutLines: [14, 16] })
    const again = await studio.ask('stockFile.preview', { file })
    expect(again.rows).toEqual([])
    expect(again.badRows).toHaveLength(15)
    expect(again.badRows[0]?.faults[0]?.code).toBe('lot-in-stock')
    await studio.close()
  })

  it.each([
    ['a line that is not there', [14, 16, 4], 'no-such-line'],
    ['every line', [2, 3, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17], 'nothing-to-import'],
  ])('refuses to leave out %s', async (_, leaveOutLines, code) => {
    const studio = await openEmptyStudio()
    expect(await studio.refused('stockFile.import', { file, leaveOutLines })).toMatchObject({
      code,
    })
    await studio.close()
  })
})

describe('lots', () => {
  it('a count sets what is on hand by a movement for the difference, at what the lot cost', async () => {
    const { studio, lots, materials } = await openSmallWorkshop()
    const count = { lotId: lots.slate, quantity: 9_000, kind: 'weighed', note: 'Spilt.' } as const
    expect(await studio.ask('lots.count', count)).toEqual({ difference: -1_000 })
    const { material, movements } = await studio.ask('materials.read', { id: materials.slate })
    expect(material).toMatchObject({ onHand: 9_000, valueMinor: 450 })
    expect(movements[0]).toMatchObject({
      quantity: -1_000,
      kind: 'weighed',
      label: 'Weighed wet slate: Spilt.',
    })
    await studio.ask('lots.count', { ...count, quantity: 9_500 })
    expect((await studio.ask('materials.read', { id: materials.slate })).material).toMatchObject({
      onHand: 9_500,
      valueMinor: 475,
    })
    await studio.close()
  })

  it('a lot of nothing and a lot of something unknown are refused', async () => {
    const { studio, materials } = await openSmallWorkshop()
    const lot = { dyeLot: '', supplierId: null, boughtOn: null, costMinor: null, note: '' }
    const receive = { materialId: materials.slate, quantity: 0, ...lot }
    expect(await studio.refused('lots.receive', receive)).toMatchObject({
      code: 'nothing-received',
      field: 'quantity',
    })
    const unknown = { ...receive, materialId: 'mat_nothere', quantity: 5 }
    expect(await studio.refused('lots.receive', unknown)).toMatchObject({
      code: 'not-found',
      field: 'materialId',
    })
    await studio.close()
  })
})

describe('weighings', () => {
  it('change how grams and counts go together, from then on', async () => {
    const { studio, materials, designId } = await openSmallWorkshop()
    const before = await studio.ask('materials.read', { id: materials.slate })
    expect(before.beadsPerGram?.basis).toBe('estimated')
    const weighing = { materialId: materials.slate, beads: 400, grossMg: 2_200, tareMg: 0 }
    const { beadsPerGram } = await studio.ask('weighings.add', weighing)
    expect(beadsPerGram.value).toBeCloseTo(181.8, 1)
    expect(beadsPerGram.basis).toBe('measured')
    const { material } = await studio.ask('materials.read', { id: materials.slate })
    expect(material.beads?.value).toBe(1_818)
    const design = await studio.ask('designs.read', { id: designId })
    expect(design.beadsPerGram[materials.slate]).toEqual(beadsPerGram)
    await studio.close()
  })

  it('of a wire, or of beads far too heavy, are refused', async () => {
    const { studio, materials } = await openSmallWorkshop()
    const weighing = { beads: 100, grossMg: 500, tareMg: 0 }
    const wire = { materialId: materials.wire, ...weighing }
    expect(await studio.refused('weighings.add', wire)).toMatchObject({ code: 'not-a-bead' })
    const heavy = { materialId: materials.slate, ...weighing, grossMg: 50_000 }
    expect(await studio.refused('weighings.add', heavy)).toMatchObject({
      code: 'weighing-implausible',
    })
    await studio.close()
  })
})

describe('materials', () => {
  it('a code is taken once, whatever its letters’ size', async () => {
    const { studio, materials } = await openSmallWorkshop()
    const { material } = await studio.ask('materials.read', { id: materials.brine })
    const { id, unit, onHand, reserved, available, lots, valueMinor, alert, beads, ...fields } =
      material
    const twin = { material: { ...fields, code: 'ws' } }
    expect(await studio.refused('materials.save', twin)).toMatchObject({
      code: 'code-taken',
      field: 'material.code',
    })
    expect(
      await studio.refused('materials.save', { id, material: { ...fields, kind: 'thread' } }),
    ).toMatchObject({ code: 'unknown-form' })
    const asWire = { ...fields, kind: 'finding', formId: null }
    expect(await studio.refused('materials.save', { id, material: asWire })).toMatchObject({
      code: 'kind-in-use',
    })
    await studio.close()
  })

  it('shows what open orders hold, and warns when they hold more than there is', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    await studio.ask('orders.save', { order: orderFor(shop, 30) })
    const { material } = await studio.ask('materials.read', { id: materials.wire })
    expect(material).toMatchObject({ onHand: 40, reserved: 60, available: -20, alert: 'short' })
    const { attention } = await studio.ask('today.read', { today: TODAY })
    expect(attention.map(({ kind, text }) => [kind, text])).toEqual([
      ['order-short', 'OR-0001 for Ferry House Gifts is not covered by stock'],
      ['stock-low', 'ear wire is short of what is promised'],
    ])
    await studio.close()
  })
})
