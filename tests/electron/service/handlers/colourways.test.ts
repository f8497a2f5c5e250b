import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { fillings, openSmallWorkshop, orderFor, type SmallWorkshop } from '../small-workshop.ts'

let workshop: SmallWorkshop

beforeEach(async () => {
  workshop = await openSmallWorkshop()
})
afterEach(() => workshop.studio.close())

const ask = () => workshop.studio.ask

async function standings() {
  const { designId } = workshop
  return (await ask()('colourways.list', { designId })).colourways
}

/** The colourway with its two beads exchanged. */
async function addBrineFirst(): Promise<string> {
  const { designId, materials } = workshop
  const turned = { ...fillings(materials), 'slot:A': materials.brine, 'slot:B': materials.slate }
  return (await ask()('colourways.save', { designId, name: 'Brine first', materials: turned })).id
}

describe('colourways.list', () => {
  it('tells what a unit takes, costs and allows, as the price sheet has it', async () => {
    const { designId, colourwayId } = workshop
    const [only, ...others] = await standings()
    expect(others).toEqual([])
    expect(only).toMatchObject({ name: 'Slate and brine', costsUnknown: 0, unassigned: [] })
    const { sheet } = await ask()('prices.sheet', { designId, colourwayId })
    const materials = sheet.cost.filter(({ group }) => group !== 'labour' && group !== 'overhead')
    expect(only?.costMinor).toBe(materials.reduce((sum, line) => sum + line.amountMinor, 0))
    expect(only?.lines.map(({ key, costMinor }) => [key, costMinor])).toEqual(
      materials.map(({ key, amountMinor }) => [key, amountMinor]),
    )
  })

  it('limits by what runs out first: 40 ear wires make 20 pairs, fewer beside a promise', async () => {
    const [before] = await standings()
    expect(before).toMatchObject({ makeable: 20, limits: [{ name: 'ear wire', available: 40 }] })
    await ask()('orders.save', { order: orderFor(workshop, 5) })
    const [after] = await standings()
    expect(after).toMatchObject({ makeable: 15, limits: [{ name: 'ear wire', available: 30 }] })
  })

  it('says what has no bead yet, and makes nothing of it', async () => {
    const { designId, materials } = workshop
    const some = { 'slot:A': materials.slate, thread: materials.thread }
    await ask()('colourways.save', { designId, name: 'Half chosen', materials: some })
    const half = (await standings()).at(-1)
    expect(half).toMatchObject({ makeable: null, unassigned: ['slot:B', 'extra:wire'] })
    expect(half?.costsUnknown).toBe(2)
  })
})

describe('colourways.remove', () => {
  it('takes one away, and undo brings it back with its beads', async () => {
    const { designId } = workshop
    const id = await addBrineFirst()
    const before = await standings()
    await ask()('colourways.remove', { designId, id })
    expect((await standings()).map(({ name }) => name)).toEqual(['Slate and brine'])
    await ask()('history.undo', {})
    expect(await standings()).toEqual(before)
  })

  it('keeps the last one', async () => {
    const { designId, colourwayId } = workshop
    const refusal = await workshop.studio.refused('colourways.remove', {
      designId,
      id: colourwayId,
    })
    expect(refusal).toMatchObject({ code: 'last-colourway', field: 'id' })
  })

  it('keeps what is promised, until the order is closed', async () => {
    const { designId, colourwayId } = workshop
    await addBrineFirst()
    const { id } = await ask()('orders.save', { order: orderFor(workshop, 2) })
    const wanted = { designId, id: colourwayId }
    const refusal = await workshop.studio.refused('colourways.remove', wanted)
    expect(refusal).toMatchObject({ code: 'colourway-promised', field: 'id' })
    expect(refusal.message).toContain('Ferry House Gifts')
    await ask()('orders.setState', { id, state: 'closed' })
    await ask()('colourways.remove', wanted)
    expect((await standings()).map(({ name }) => name)).toEqual(['Brine first'])
    expect((await ask()('orders.read', { id })).order.lines[0]?.colourwayName).toBe(
      'Slate and brine',
    )
  })

  it('keeps what is being made at the bench, until the work is given up', async () => {
    const { designId, colourwayId } = workshop
    await addBrineFirst()
    const begun = { begunOn: '2026-11-25', before: {} }
    const { id } = await ask()('bench.begin', { designId, colourwayId, units: 1, ...begun })
    const wanted = { designId, id: colourwayId }
    const refusal = await workshop.studio.refused('colourways.remove', wanted)
    expect(refusal).toMatchObject({ code: 'colourway-at-bench', field: 'id' })
    await ask()('bench.giveUp', { id, note: '' })
    await ask()('colourways.remove', wanted)
    expect((await standings()).map(({ name }) => name)).toEqual(['Brine first'])
  })

  it('leaves pieces made in it what they are', async () => {
    const { designId, colourwayId, placeId } = workshop
    await ask()('makes.finish', {
      ...{ designId, colourwayId, placeId },
      units: 1,
      madeOn: '2026-11-25',
      note: '',
    })
    await addBrineFirst()
    const before = await ask()('pieces.list', { state: 'here' })
    await ask()('colourways.remove', { designId, id: colourwayId })
    const after = await ask()('pieces.list', { state: 'here' })
    expect(after.pieces).toEqual(before.pieces)
    expect(after.pieces[0]?.colourwayName).toBe('Slate and brine')
  })

  it('refuses a colourway of another design', async () => {
    const { id } = await ask()('designs.save', {
      name: 'Other',
      tags: [],
      body: (await ask()('designs.read', { id: workshop.designId })).body,
      note: '',
    })
    const wanted = { designId: id, id: workshop.colourwayId }
    const refusal = await workshop.studio.refused('colourways.remove', wanted)
    expect(refusal).toMatchObject({ code: 'colourway-of-another-design', field: 'id' })
  })
})

describe('designs.drawing', () => {
  it('shows a design in the colours of its first colourway’s beads, else its own', async () => {
    const { designId, materials } = workshop
    const own = await ask()('designs.drawing', { id: designId })
    expect(own.looks).toEqual([
      { hex: '#4b5a63', finish: 'matte' },
      { hex: '#2f6f82', finish: 'opaque' },
    ])
    const { material } = await ask()('materials.read', { id: materials.slate })
    const { code, name, kind, formId, lotsMatter, lowAt, tareMg, drawer, note, declaration } =
      material
    await ask()('materials.save', {
      id: materials.slate,
      material: {
        ...{ code, name, kind, formId, lotsMatter, lowAt, tareMg, drawer, note, declaration },
        colourHex: '#223344',
        finish: 'gloss',
      },
    })
    const filled = await ask()('designs.drawing', { id: designId })
    expect(filled.looks[0]).toEqual({ hex: '#223344', finish: 'gloss' })
    expect(filled.versionId).toBe(own.versionId)
    expect(filled.body).toEqual(own.body)
  })

  it('follows the latest version', async () => {
    const { designId } = workshop
    const { name, tags, body, versionId } = await ask()('designs.read', { id: designId })
    await ask()('designs.save', {
      id: designId,
      name,
      tags,
      body: { ...body, unitName: 'set' },
      note: '',
    })
    const drawing = await ask()('designs.drawing', { id: designId })
    expect(drawing.versionId).not.toBe(versionId)
    expect(drawing.body.unitName).toBe('set')
  })
})
