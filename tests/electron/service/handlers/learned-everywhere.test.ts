import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readQuestion } from '../../../../renderer/rooms/designs/reading/reading-question.ts'
import { slotCalibrations } from '../../../../renderer/rooms/designs/reading/slot-calibrations.ts'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { readerMap } from '../../../../shared-core/bench/reader-place.ts'
import { estimateUpTo } from '../../../../shared-core/bench/time-left.ts'
import { writeScript } from '../../../../shared-core/bench/write-script.ts'
import type { CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { DesignReading } from '../../../../shared-core/design/reading.ts'
import { durationS } from '../../../../shared-core/units/duration.ts'
import { formatDuration } from '../../../../shared-core/units/format-duration.ts'
import { formatThread } from '../../../../shared-core/units/format-length.ts'
import { threadMm } from '../../../../shared-core/units/length.ts'
import { TODAY } from '../open-studio.ts'
import { openSmallWorkshop, orderFor, type SmallWorkshop, smallBody } from '../small-workshop.ts'

type Body = CallInput<'designs.save'>['body']

/** The small design with a fringe, and a loomed strip whose warps are cut too. */
const body: Body = {
  ...smallBody,
  parts: [
    ...smallBody.parts,
    {
      ...{ kind: 'strand', id: 'fringe', name: 'Fringe', copies: 2, beads: '9A 1B' },
      ...{ shape: 'fringe', anchor: { panelId: 'panel', row: 0, bead: 1 } },
    },
    {
      ...{ kind: 'panel', id: 'strip', name: 'Strip', formId: 'cylinder-11/0' },
      ...{ copies: 1, mirrored: false, route: {} },
      chart: {
        stitch: 'loom',
        rows: Array.from({ length: 12 }, () => ({ start: 0, cells: '2A 2B' })),
      },
    },
  ],
} as Body

let shop: SmallWorkshop
let learned: CallOutput<'workshop.pace'>['learned']
/** What the design's own page shows. */
let page: DesignReading
const what = () => ({ designId: shop.designId, colourwayId: shop.colourwayId })
const { ask } = {
  ask: ((name, input) => shop.studio.ask(name, input)) as SmallWorkshop['studio']['ask'],
}

/** A workshop that is slower than the tables, uses more thread, puts more beads aside and has weighed its own. */
beforeAll(async () => {
  shop = await openSmallWorkshop()
  const { id, name, tags } = await ask('designs.read', { id: shop.designId })
  await ask('designs.save', { id, name, tags, body, note: '' })
  await ask('weighings.add', {
    ...{ materialId: shop.materials.slate, beads: 200, grossMg: 1_130, tareMg: 0 },
  })
  for (let time = 0; time < 3; time += 1) {
    const work = { ...what(), units: 1, lots: {}, begunOn: TODAY, before: {} }
    const begun = (await ask('bench.begin', work)).id
    const bare = { id: begun, units: 1, culls: {}, weights: [] }
    const { lines, figures } = await ask('bench.reckon', bare)
    const cutMm = lines.find(({ materialId }) => materialId === shop.materials.thread)?.quantity
    await ask('bench.finish', {
      ...{ ...bare, culls: { A: 8, B: 5 }, benchS: Math.round(figures.seconds.planned * 1.4) },
      threadLeftMm: (cutMm ?? 0) - Math.round(figures.threadMm.planned * 1.09),
      ...{ placeId: shop.placeId, madeOn: TODAY, note: '' },
    })
  }
  learned = (await ask('workshop.pace', {})).learned
  const design = await ask('designs.read', { id: shop.designId })
  const read = readQuestion({
    body: design.body,
    learned,
    tables: referenceTables,
    calibrations: slotCalibrations(design.body.palette, referenceTables, {
      materials: design.colourways[0]?.materials ?? {},
      beadsPerGram: design.beadsPerGram,
    }),
  })
  if (!read.ok) throw new Error(read.error.message)
  page = read.value
})
afterAll(() => shop.studio.close())

const ceil = (value: number) => Math.ceil(value - 1e-9 * value)
const materialOf = (label: string) => (label === 'A' ? shop.materials.slate : shop.materials.brine)

/** The words of every page of the design's pattern sheet. */
async function sheetWords(): Promise<string> {
  const wish = { ...what(), audience: 'self', paper: 'a4' } as const
  const words: string[] = []
  for (let number = 1, pages = 1; number <= pages; number += 1) {
    const shown = await ask('designs.sheetPage', { ...wish, number })
    pages = shown.pages
    for (const mark of shown.page.marks) if (mark.kind === 'text') words.push(mark.text)
  }
  return plain(words.join(' '))
}

/** With plain spaces, as a sheet breaks its lines at them. */
function plain(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, ' ')
}

describe('what a workshop has learnt', () => {
  it('is not what the tables say, and says so', () => {
    const plain = readQuestion({
      body,
      calibrations: {},
      tables: referenceTables,
      learned: {
        ...learned,
        ...{ pace: undefined, cullRates: undefined, threadUse: undefined },
      } as never,
    })
    if (!plain.ok) throw new Error(plain.error.message)
    expect(page.thread.spoolMm.value).toBeGreaterThan(plain.value.thread.spoolMm.value)
    expect(page.labour.totalS.value).toBeGreaterThan(1.1 * plain.value.labour.totalS.value)
    expect(page.counts[0]?.needMg.value).toBeGreaterThan(plain.value.counts[0]?.needMg.value ?? 0)
    expect(page.thread.spoolMm.basis).toBe('measured')
    expect(page.labour.totalS.basis).toBe('measured')
  })

  it('is the same thread, minutes and grams in the engine as on the design’s page', async () => {
    const { pace, cullRates, threadUse } = learned
    const weighings = { A: [{ beads: 200, grossMg: 1_130, tareMg: 0, digitMg: 10 }] }
    const read = await ask('engine.read', { body, weighings, pace, cullRates, threadUse })
    expect(read.thread).toEqual(page.thread)
    expect(read.labour).toEqual(page.labour)
    expect(read.counts).toEqual(page.counts)
    expect(read.unitMassMg).toEqual(page.unitMassMg)
    expect(read.parts.map(({ thread, labourS }) => ({ thread, labourS }))).toEqual(
      page.parts.map(({ thread, labourS }) => ({ thread, labourS })),
    )
  })

  it('is the same in its parts, whose lengths are those of the whole', () => {
    const copies = new Map(body.parts.map((part) => [part.id, part.copies]))
    const cutMm = page.parts.flatMap(({ partId, thread }) => {
      // A fringe's own lengths are those of both its strands: they go with the panel's copies.
      const times = partId === 'fringe' ? 2 : (copies.get(partId) ?? 1)
      return Array.from({ length: times }, () => thread.cutMm).flat()
    })
    expect(cutMm.toSorted()).toEqual(page.thread.cutMm.toSorted())
    for (const { thread, events } of page.parts) {
      const said = events.flatMap((event) =>
        event.kind === 'add-thread' || event.kind === 'warp' ? [event.lengthMm] : [],
      )
      expect(said.toSorted()).toEqual(thread.cutMm.toSorted())
    }
  })

  it('is the same in plan, price, cover and what is booked', async () => {
    const plan = await ask('makes.plan', { ...what(), units: 4 })
    expect(plan.labourS.value).toBe(4 * page.labour.totalS.value)
    expect(plan.labourS.basis).toBe(page.labour.totalS.basis)
    const { inputs } = await ask('prices.sheet', what())
    expect(inputs.labourS).toEqual(page.labour.totalS)
    const draft = { today: TODAY, order: { draft: orderFor(shop, 1_000) } }
    const { limits } = (await ask('orders.cover', draft)).lines[0] ?? { limits: [] }
    const needs = [
      ...page.counts.map(({ label, needMg }) => [materialOf(label), needMg] as const),
      [shop.materials.thread, page.thread.spoolMm] as const,
    ]
    for (const [id, need] of needs) {
      const draws = plan.draws.filter(({ materialId }) => materialId === id)
      expect(draws.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(4 * ceil(need.value))
      expect(limits.find(({ materialId }) => materialId === id)?.perUnit).toBe(ceil(need.value))
      const cost = inputs.materials.find(({ label }) => draws[0]?.name === label)
      expect(cost).toMatchObject({ quantity: ceil(need.value), basis: need.basis })
    }
  })

  it('is the same at the bench, from its beginning to what leaves the stock', async () => {
    const work = { ...what(), units: 2, lots: {}, begunOn: TODAY, before: {} }
    const { id } = await ask('bench.begin', work)
    const read = await ask('bench.read', { id })
    expect(read.work.plannedS.value).toBe(2 * page.labour.totalS.value)
    const held = read.held.filter(({ materialId }) => materialId === shop.materials.thread)
    expect(held[0]?.quantity).toBe(2 * page.thread.spoolMm.value)
    const bare = { id, units: 2, culls: {}, weights: [] }
    const { figures } = await ask('bench.reckon', bare)
    expect(figures.threadMm.planned).toBe(Math.round(2 * page.thread.inPieceMm.value))
    expect(figures.seconds.planned).toBe(2 * page.labour.totalS.value)
    const onHand = async () =>
      (await ask('materials.read', { id: shop.materials.thread })).material.onHand
    const before = await onHand()
    const { makeId } = await ask('bench.finish', {
      ...{ ...bare, placeId: shop.placeId, madeOn: TODAY, note: '' },
    })
    expect(makeId).not.toBe('')
    expect(before - (await onHand())).toBe(2 * page.thread.spoolMm.value)
    await ask('history.undo', {})
    await ask('bench.giveUp', { id, note: '' })
  })

  it('is the same in the row reader: the lengths it cuts, and the time that is left', () => {
    const script = writeScript(body, { ...referenceTables, ...learned })
    if (!script.ok) throw new Error(script.error.message)
    const lines = script.value.pieces.flatMap((piece) =>
      piece.stretches.flatMap((stretch) => stretch.lines),
    )
    const cutMm = lines.flatMap(({ threadMm: mm, warps }) => [
      ...(mm === undefined ? [] : [mm]),
      ...Array.from({ length: warps?.count ?? 0 }, () => warps?.lengthMm ?? 0),
    ])
    expect(cutMm.toSorted()).toEqual(page.thread.cutMm.toSorted())
    const map = readerMap(script.value, 1)
    // Each part is reckoned to the second.
    const off = Math.abs(estimateUpTo(map, map.steps) - page.labour.stitchingS.value)
    expect(off).toBeLessThanOrEqual(page.work.reduce((sum, { copies }) => sum + copies, 0))
    for (const { threadMm: mm, steps } of lines) {
      if (mm !== undefined) expect(steps[0]?.text).toContain(`${mm} mm`)
    }
  })

  it('is the same on paper and in the files beside it', async () => {
    const words = await sheetWords()
    const spool = plain(formatThread(threadMm(page.thread.spoolMm.value), { decimal: ',' }))
    expect(words).toContain(`${spool} in all`)
    for (const mm of new Set(page.thread.cutMm)) {
      expect(words).toContain(plain(formatThread(threadMm(mm), { decimal: ',' })))
    }
    expect(words).toContain(plain(`about ${formatDuration(durationS(page.labour.totalS.value))}`))
    const { base64 } = await ask('designs.export', { ...what(), as: 'counts' })
    const table = Buffer.from(base64, 'base64').toString('utf8')
    for (const { needMg } of page.counts) {
      const have = (Math.ceil(needMg.value / 10) / 100).toFixed(2).replace('.', ',')
      expect(words).toContain(`${have} g`)
      expect(table).toContain(`"${have}"`)
    }
  })
})

describe('engine.read', () => {
  it('refuses a share put aside of everything, and a use of thread that no hand has', async () => {
    const whole = { low: 0.5, value: 1, high: 1, basis: 'measured' } as const
    const cullRates = { 'cylinder-11/0': whole }
    expect(await shop.studio.refused('engine.read', { body, cullRates })).toMatchObject({
      ...{ code: 'cull-range', field: 'cullRates.cylinder-11/0' },
    })
    for (const figures of [{ value: 0.4 }, { low: 0.4, value: 0.9 }, { value: 1.5, high: 2.1 }]) {
      const threadUse = { ...whole, ...figures }
      expect(await shop.studio.refused('engine.read', { body, threadUse })).toMatchObject({
        ...{ code: 'thread-use-range', field: 'threadUse' },
      })
    }
  })
})
