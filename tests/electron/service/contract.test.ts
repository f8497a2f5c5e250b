import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type CallName, calls } from '../../../shared-core/contract/calls.ts'
import { engineInputs } from './engine-inputs.ts'
import { observe } from './observe.ts'
import { openSampleStudio, type Studio, TODAY } from './open-studio.ts'
import { saltCord, tideDrop } from './own-entries.ts'
import { smallBody } from './small-workshop.ts'

const names = Object.keys(calls) as CallName[]
const sampleFile = (name: string) => ({
  fileName: name,
  base64: readFileSync(new URL(`../../fixtures/samples/${name}`, import.meta.url)).toString(
    'base64',
  ),
})

let studio: Studio
let inputs: Readonly<Record<CallName, unknown>>

beforeAll(async () => {
  studio = await openSampleStudio()
  inputs = await goodInputs(studio)
})
afterAll(() => studio.close())

/** An input that each call accepts on the sample. */
async function goodInputs({ ask }: Studio): Promise<Readonly<Record<CallName, unknown>>> {
  const { workshop, channels, places, suppliers } = await ask('workshop.read', {})
  if (workshop === null) throw new Error('expected a workshop')
  const { currency: _, ...figures } = workshop
  const { materials } = await ask('materials.list', {})
  const bead = materials.find((material) => material.kind === 'bead')
  const { designs } = await ask('designs.list', {})
  const cuff = designs.find((design) => design.name === 'Samphire studs')
  const whole = await ask('designs.read', { id: cuff?.id ?? '' })
  const { id: spare } = await ask('colourways.save', {
    designId: whole.id,
    name: 'Spare',
    materials: {},
  })
  const { orders } = await ask('orders.list', { state: 'open' })
  const { pieces } = await ask('pieces.list', { state: 'here' })
  const sold = (await ask('pieces.list', { state: 'sold' })).pieces[0]
  const colourway = whole.colourways[0]
  const what = { designId: whole.id, colourwayId: colourway?.id }
  const onTable = { designId: whole.id }
  await ask('drafts.open', onTable)
  const needle12 = { kind: 'pieces', needleSize: '12' }
  const lots = (await ask('materials.read', { id: bead?.id ?? '' })).lots
  const {
    id: materialId,
    unit,
    onHand,
    reserved,
    available,
    lots: __,
    valueMinor,
    alert,
    beads,
    ...fields
  } = bead ?? { id: '' }
  const order = {
    customer: 'Quay café',
    promisedOn: TODAY,
    dueOn: '2026-12-20',
    note: '',
    lines: [{ ...what, units: 1, priceMinor: null }],
  }
  const { id: workId } = await ask('bench.begin', {
    ...{ designId: whole.id, colourwayId: colourway?.id ?? '', units: 1 },
    ...{ begunOn: TODAY, before: {} },
  })
  const finish = { id: workId, units: 1, benchS: 1_800, culls: {}, weights: [] }
  const [timed] = (await ask('workshop.pace', {})).makes
  const make = { ...what, units: 1, placeId: places[0]?.id, madeOn: TODAY, note: '' }
  const supplierId = suppliers[0]?.id ?? null
  await ask('tables.saveForm', { form: tideDrop })
  await ask('tables.saveThread', { thread: { ...saltCord, name: 'Salt cord before' } })
  return {
    'workshop.read': {},
    'workshop.begin': {
      with: 'empty',
      name: 'Again',
      currency: 'EUR',
      decimalMark: ',',
      today: TODAY,
    },
    'workshop.save': { workshop: { ...figures, hourlyRateMinor: 1_700 } },
    'channel.save': { channel: { ...channels[0], feePercent: '3' } },
    'place.save': { place: { name: 'Window', channelId: channels[0]?.id } },
    'supplier.save': { supplier: { name: 'Tidepool Glass', leadDays: 9, note: '' } },
    'history.list': { limit: 5 },
    'history.undo': {},
    'history.redo': {},
    'tables.list': {},
    'tables.own': {},
    'tables.saveForm': { form: { ...tideDrop, name: 'Tide drop 4 mm', id: undefined } },
    'tables.saveThread': { thread: saltCord },
    'tables.removeForm': { id: tideDrop.id },
    'tables.removeThread': { id: saltCord.id },
    'tables.take': { forms: [{ ...tideDrop, sizeLabel: '3,5 mm' }], threads: [saltCord] },
    'materials.list': { search: 'slate', kind: 'bead' },
    'materials.read': { id: materialId },
    'materials.save': { id: materialId, material: { ...fields, note: 'Kept dry.' } },
    'lots.receive': {
      materialId,
      quantity: 500,
      dyeLot: 'Z1',
      supplierId,
      boughtOn: TODAY,
      costMinor: 90,
      note: '',
    },
    'lots.count': { lotId: lots[0]?.id, quantity: 4_321, kind: 'weighed', note: '' },
    'weighings.add': { materialId, beads: 200, grossMg: 1_010, tareMg: 0 },
    'offers.save': { offer: { materialId, supplierId, packQuantity: 7_200, priceMinor: 399 } },
    'stockFile.preview': { file: sampleFile('stock-list.csv') },
    'stockFile.import': { file: sampleFile('stock-list.csv'), leaveOutLines: [14, 16] },
    'designs.list': {},
    'designs.read': { id: whole.id, version: 1 },
    'designs.save': { name: 'Small triangles', tags: ['new'], body: smallBody, note: '' },
    'designs.archive': { id: whole.id, archived: true },
    'colourways.save': {
      ...what,
      id: colourway?.id,
      name: 'Renamed',
      materials: colourway?.materials,
      colourwayId: undefined,
    },
    'designs.drawing': { id: whole.id },
    'colourways.list': { designId: whole.id },
    'colourways.remove': { designId: whole.id, id: spare },
    'designs.sheet': { ...what, audience: 'sale', paper: 'a4' },
    'designs.sheetPage': { ...what, audience: 'class', paper: 'letter', number: 3 },
    'designs.export': { ...what, as: 'grid' },
    'documents.stop': {},
    'drafts.open': onTable,
    'drafts.state': onTable,
    'drafts.strokes': { ...onTable, from: 1, to: 5 },
    'drafts.stroke': {
      ...onTable,
      position: 0,
      strokes: [{ label: 'Another needle', redo: [needle12], undo: [needle12] }],
    },
    'drafts.moveTo': { ...onTable, position: 0 },
    'drafts.stock': what,
    'drafts.forget': onTable,
    'chartFile.preview': { file: sampleFile('tidewrack-chart.csv') },
    'orders.list': { state: 'all' },
    'orders.read': { id: orders[0]?.id },
    'orders.save': { order },
    'orders.setState': { id: orders[0]?.id, state: 'closed' },
    'orders.cover': { today: TODAY, order: { draft: order } },
    'orders.coverAll': { today: TODAY },
    'prices.sheet': what,
    'prices.set': { ...what, channelId: channels[0]?.id, priceMinor: 2_300 },
    'makes.plan': { ...what, units: 1 },
    'makes.finish': make,
    'bench.begin': { ...what, units: 1, begunOn: TODAY, before: { [materialId]: 12_000 } },
    'bench.list': { state: 'under-way' },
    'bench.read': { id: workId },
    'bench.keep': {
      ...{ id: workId, place: { copy: 1, part: 0, step: 4 } },
      ...{ workedS: 90, unitsDone: 0, resting: true },
    },
    'bench.reckon': finish,
    'bench.finish': { ...finish, placeId: places[0]?.id, madeOn: TODAY, note: '' },
    'bench.giveUp': { id: workId, note: 'A thread broke.' },
    'workshop.pace': {},
    'pace.leaveOut': { makeIds: [timed?.makeId], leftOut: true },
    'pieces.list': { state: 'all', search: 'studs' },
    'pieces.read': { id: pieces[0]?.id },
    'pieces.move': {
      pieceIds: [pieces[0]?.id],
      placeId: places.find((place) => place.id !== pieces[0]?.placeId)?.id,
    },
    'pieces.sell': {
      pieceId: pieces[0]?.id,
      channelId: channels[0]?.id,
      priceMinor: 2_200,
      soldOn: TODAY,
      note: '',
    },
    'pieces.end': { pieceId: sold?.id, how: 'returned', placeId: places[0]?.id, note: '' },
    'tags.print': { pieceIds: [pieces[0]?.id], paper: 'a4', channelId: channels[0]?.id },
    'today.read': { today: TODAY },
    'takings.read': { from: '2026-01-01', to: TODAY },
    'engine.read': { body: whole.body },
    ...engineInputs,
  }
}

function withoutUndefined(input: unknown): unknown {
  return JSON.parse(JSON.stringify(input))
}

describe('every call of the contract', () => {
  it.each(names)('%s refuses a field it does not know, naming it', async (name) => {
    const input = { ...(withoutUndefined(inputs[name]) as object), stray: true }
    const refusal = await studio.refused(name, input)
    expect(refusal).toMatchObject({ code: 'bad-input', field: 'stray' })
  })

  it.each(names)('%s refuses nothing, a word and a list', async (name) => {
    for (const input of [undefined, null, 'word', [], 7]) {
      expect(await studio.refused(name, input)).toMatchObject({ code: 'bad-input' })
    }
  })

  it.each(names)('%s refuses each field when it is missing or of another kind', async (name) => {
    const good = withoutUndefined(inputs[name]) as Record<string, unknown>
    for (const [field, value] of Object.entries(good)) {
      const wrong = typeof value === 'object' ? 42 : { odd: 1 }
      expect(await studio.refused(name, { ...good, [field]: wrong })).toMatchObject({
        code: 'bad-input',
        field: expect.stringContaining(field),
      })
    }
  })

  it.each(names.filter((name) => calls[name].changes.length === 0))(
    '%s answers in its own shape and changes nothing',
    async (name) => {
      const before = await studio.ask('history.list', { limit: 1 })
      const answer = await studio.answer(name, withoutUndefined(inputs[name]))
      expect(answer).toMatchObject({ ok: true })
      expect(await studio.ask('history.list', { limit: 1 })).toEqual(before)
    },
  )

  it.each(names.filter((name) => calls[name].undoable))(
    '%s is one step of the history, which undo takes back whole',
    async (name) => {
      const [before, steps] = [await observe(studio), await latestStep(studio)]
      const answer = await studio.answer(name, withoutUndefined(inputs[name]))
      expect(answer).toMatchObject({ ok: true })
      const step = await latestStep(studio)
      expect(step?.id).not.toBe(steps?.id)
      expect(step).toMatchObject({ call: name, state: 'done' })
      expect(step?.label).toMatch(/^[A-Z]/)
      await studio.ask('history.undo', {})
      expect(await observe(studio)).toEqual(before)
    },
  )

  it.each(['history.undo', 'history.redo'] as const)(
    '%s tells of every topic that an act may change',
    (name) => {
      const topics = new Set(
        Object.values(calls).flatMap((call) => (call.undoable ? [...call.changes] : [])),
      )
      expect(calls[name].changes).toEqual(expect.arrayContaining([...topics]))
    },
  )

  it('workshop.begin is refused where there is a workshop', async () => {
    const refusal = await studio.refused('workshop.begin', inputs['workshop.begin'])
    expect(refusal).toMatchObject({ code: 'workshop-there' })
  })

  it('refuses a call that is not in it', async () => {
    for (const name of ['orders.delete', 'toString', '__proto__', '']) {
      expect(await studio.answer(name, {})).toMatchObject({
        ok: false,
        error: { code: 'unknown-call' },
      })
    }
  })

  it.each([
    ['materials.read', { id: 'mat_nothere' }],
    ['designs.read', { id: 'des_nothere' }],
    ['orders.read', { id: 'ord_nothere' }],
    ['pieces.read', { id: 'pc_nothere' }],
    ['orders.setState', { id: 'ord_nothere', state: 'closed' }],
    ['designs.archive', { id: 'des_nothere', archived: true }],
    ['bench.read', { id: 'bw_nothere' }],
    ['bench.giveUp', { id: 'bw_nothere', note: '' }],
    ['materials.read', { id: 'ord_123456' }],
  ] as const)('%s names what is not there', async (name, input) => {
    expect(await studio.refused(name, input)).toMatchObject({ code: 'not-found', field: 'id' })
  })
})

async function latestStep({ ask }: Studio) {
  return (await ask('history.list', { limit: 1 })).entries[0]
}
