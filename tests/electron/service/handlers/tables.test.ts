import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { measured } from '../../../../shared-core/units/spread.ts'
import { addOwn, dropMaterial, formOf, saltCord, saveDrops, tideDrop } from '../own-entries.ts'
import { openSmallWorkshop, orderFor, type SmallWorkshop } from '../small-workshop.ts'

let workshop: SmallWorkshop

beforeEach(async () => {
  workshop = await openSmallWorkshop()
})
afterEach(() => workshop.studio.close())

const ask: SmallWorkshop['studio']['ask'] = (name, input) => workshop.studio.ask(name, input)
const refused: SmallWorkshop['studio']['refused'] = (name, input) =>
  workshop.studio.refused(name, input)

/** The 11/0 cylinder as no reference knows it: twice as wide and long, and twice as heavy. */
const ownCylinder = {
  ...(referenceTables.forms.find(({ id }) => id === 'cylinder-11/0') ?? tideDrop),
  diameterMm: measured(2.9, 3, 3.1),
  lengthMm: measured(2.5, 2.6, 2.7),
  beadsPerGram: measured(98, 100, 102),
}
const { evidence: _, ...cylinder } = { evidence: '', ...ownCylinder }

describe('tables.list', () => {
  it('gives every form and thread with where it comes from, how well it is known and what uses it', async () => {
    await addOwn(ask)
    const { forms, threads } = await ask('tables.list', {})
    expect(forms).toHaveLength(referenceTables.forms.length + 1)
    expect(threads).toHaveLength(referenceTables.threads.length + 1)
    expect(forms.at(-1)).toEqual({
      ...tideDrop,
      origin: 'own',
      evidence: 'own',
      uses: { materials: 0, designs: 0 },
    })
    expect(await formOf(ask, 'cylinder-11/0')).toMatchObject({
      origin: 'reference',
      evidence: 'several-sources',
      uses: { materials: 2, designs: 1 },
    })
    expect(threads.find(({ id }) => id === 'braided-6lb')).toMatchObject({
      origin: 'reference',
      uses: { materials: 1, designs: 1 },
    })
  })
})

describe('tables.saveForm', () => {
  it('coins an id from the name where none is given', async () => {
    const { id: __, ...nameless } = tideDrop
    expect(await ask('tables.saveForm', { form: nameless })).toEqual({ id: 'tide-drop-3-5-mm' })
  })

  it.each([
    [
      'a range out of order',
      { diameterMm: measured(3, 3, 3), lengthMm: { ...tideDrop.lengthMm, low: 9 } },
      'bead-table-out-of-range',
      'form.lengthMm',
    ],
    [
      'a hole wider than the bead',
      { holeMm: measured(3.5, 3.6, 3.7) },
      'bead-hole-too-wide',
      'form.holeMm',
    ],
    ['a name that another has', { name: 'cylinder bead 11/0' }, 'name-taken', 'form.name'],
  ])('refuses %s, naming the field, and keeps nothing', async (_what, over, code, field) => {
    expect(await refused('tables.saveForm', { form: { ...tideDrop, ...over } })).toMatchObject({
      code,
      field,
    })
    expect((await ask('tables.own', {})).forms).toEqual([])
  })

  it('lets materials, designs, bills, prices, promises and sheets use it like any other', async () => {
    await addOwn(ask)
    const { id: materialId } = await ask('materials.save', { material: dropMaterial })
    await ask('lots.receive', {
      ...{ materialId, quantity: 1_000, dyeLot: '', supplierId: null },
      ...{ boughtOn: null, costMinor: 500, note: '' },
    })
    const { material, beadsPerGram } = await ask('materials.read', { id: materialId })
    expect(beadsPerGram).toMatchObject({ value: 15 })
    expect(material.beads).toMatchObject({ value: 15 })
    const { id: designId } = await saveDrops(ask)
    const [colourway] = (await ask('designs.read', { id: designId })).colourways
    const colourwayId = colourway?.id ?? ''
    const { materials } = workshop
    await ask('colourways.save', {
      ...{ designId, id: colourwayId, name: 'Slate' },
      materials: { 'slot:A': materialId, 'slot:B': materialId, 'extra:wire': materials.wire },
    })
    const [standing] = (await ask('colourways.list', { designId })).colourways
    expect(standing?.lines.find(({ key }) => key === 'slot:A')?.quantity).toBeGreaterThan(800)
    const order = { ...orderFor(workshop, 1) }
    const lines = [{ designId, colourwayId, units: 1, priceMinor: null }]
    const cover = await ask('orders.cover', {
      today: '2026-11-25',
      order: { draft: { ...order, lines } },
    })
    expect(JSON.stringify(cover)).toContain('tide drop, slate')
    const sheet = await ask('designs.sheetPage', {
      ...{ designId, colourwayId, audience: 'self', paper: 'a4', number: 2 },
    })
    expect(JSON.stringify(sheet.page)).toContain('Tide drop')
    await ask('weighings.add', { materialId, beads: 50, grossMg: 3_300, tareMg: 0 })
  })

  it('takes a reference’s place everywhere, in versions saved before too, and undo gives it back', async () => {
    const { designId, colourwayId } = workshop
    const figures = async () => {
      const { sheet } = await ask('prices.sheet', { designId, colourwayId })
      const [plan] = (await ask('colourways.list', { designId })).colourways
      const of = (key: string) => plan?.lines.find((line) => line.key === key)?.quantity ?? 0
      return { slot: of('slot:A'), thread: of('thread'), cost: sheet.cost }
    }
    const before = await figures()
    await ask('tables.saveForm', { form: cylinder })
    const after = await figures()
    expect(after.thread).toBeGreaterThan(before.thread)
    // Twice the mass a bead, so about twice the grams.
    expect(after.slot / before.slot).toBeCloseTo(2, 1)
    expect(await formOf(ask, 'cylinder-11/0')).toMatchObject({
      origin: 'replaces',
      evidence: 'own',
    })
    await ask('history.undo', {})
    expect(await figures()).toEqual(before)
    await ask('history.redo', {})
    expect(await figures()).toEqual(after)
    await ask('tables.removeForm', { id: 'cylinder-11/0' })
    expect(await figures()).toEqual(before)
    const thick = { ...saltCord, id: 'braided-6lb', diameterMm: measured(0.58, 0.6, 0.62) }
    await ask('tables.saveThread', { thread: thick })
    expect((await figures()).thread).not.toBe(before.thread)
    await ask('tables.removeThread', { id: thick.id })
    expect(await figures()).toEqual(before)
  })

  it('is told as added or saved', async () => {
    await addOwn(ask)
    await ask('tables.saveForm', { form: { ...tideDrop, sizeLabel: '4 mm' } })
    await ask('tables.saveThread', { thread: { ...saltCord, id: 'braided-6lb', name: 'Braid' } })
    const { entries } = await ask('history.list', { limit: 4 })
    expect(entries.map(({ label }) => label)).toEqual([
      'Saved the thread Braid',
      'Saved the form Tide drop 3,5 mm',
      'Added the thread Salt cord',
      'Added the form Tide drop 3,5 mm',
    ])
  })
})

describe('tables.take', () => {
  it('takes in what tables.own gives, and says what was new', async () => {
    await addOwn(ask)
    const own = await ask('tables.own', {})
    expect(own).toEqual({ forms: [tideDrop], threads: [saltCord] })
    const braid = { ...saltCord, id: 'braided-6lb', name: 'Braid as measured' }
    const forms = [{ ...tideDrop, sizeLabel: '4 mm' }, cylinder]
    const changed = { forms, threads: [...own.threads, braid] }
    expect(await ask('tables.take', changed)).toEqual({ added: 0, replaced: 3, same: 1 })
    expect(await ask('tables.take', changed)).toEqual({ added: 0, replaced: 0, same: 4 })
    // The engine takes the same file without a store.
    const known = await ask('engine.tables', { tables: await ask('tables.own', {}) })
    expect(known.forms.find(({ id }) => id === tideDrop.id)).toMatchObject({ sizeLabel: '4 mm' })
  })

  it.each([
    [
      'one bad entry',
      { forms: [tideDrop, { ...cylinder, holeMm: measured(9, 9, 9) }] },
      'bead-hole-too-wide',
      'forms.1.holeMm',
    ],
    [
      'the same id twice',
      { forms: [tideDrop, { ...tideDrop, name: 'Twin' }] },
      'id-twice',
      'forms.1.id',
    ],
    [
      'the same name twice',
      { forms: [tideDrop, { ...tideDrop, id: 'twin' }] },
      'name-taken',
      'forms.0.name',
    ],
    ['nothing in it', {}, 'nothing-to-take', 'forms'],
  ])('refuses a table with %s whole', async (_what, table, code, field) => {
    expect(await refused('tables.take', table)).toMatchObject({ code, field })
    expect(await ask('tables.own', {})).toEqual({ forms: [], threads: [] })
  })
})

describe('a stock list', () => {
  it('finds a form of the workshop’s own by its kind and size, and a thread by its name', async () => {
    await addOwn(ask)
    const text = 'code;name;kind;size\nTD;slate;drop;3,5 mm\nSC;Salt cord;thread;\n'
    const file = { fileName: 'stock.csv', base64: Buffer.from(text).toString('base64') }
    const formIds = async () =>
      (await ask('stockFile.preview', { file })).rows.map(({ formId }) => formId)
    expect(await formIds()).toEqual([tideDrop.id, saltCord.id])
    // Two of that kind and size: it cannot be told which is meant.
    await ask('tables.saveForm', { form: { ...tideDrop, id: 'other-drop', name: 'Other drop' } })
    expect(await formIds()).toEqual([null, saltCord.id])
  })
})
