import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { newId } from '../../../electron/service/open-service.ts'
import { createService } from '../../../electron/service/service.ts'
import { observe } from './observe.ts'
import { openSampleStudio, openStudio, TODAY } from './open-studio.ts'
import { openSmallWorkshop, orderFor, smallBody } from './small-workshop.ts'

let folder = ''
let file = ''

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tallystrand-service-'))
  file = join(folder, 'workshop.tally')
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

describe('createService', () => {
  it('gives the same answers after it was closed and opened again', async () => {
    const studio = await openSampleStudio(file)
    const before = await observe(studio)
    await studio.close()
    const again = await openStudio(file)
    expect(await observe(again)).toEqual(before)
    await again.close()
  })

  it('undoes after it was closed and opened again', async () => {
    const shop = await openSmallWorkshop(file)
    const before = await observe(shop.studio)
    await shop.studio.ask('orders.save', { order: orderFor(shop, 3) })
    await shop.studio.close()
    const again = await openStudio(file)
    expect(await again.ask('history.undo', {})).toEqual({
      label: 'Entered order OR-0001 for Ferry House Gifts',
    })
    expect(await observe(again)).toEqual(before)
    await again.close()
  })

  it('leaves nothing of an act that fails in the middle, and goes on', async () => {
    const shop = await openSmallWorkshop(file)
    const { designId, colourwayId, placeId, studio } = shop
    const before = await observe(studio)
    const other = new BetterSqlite(file)
    other.exec(`create trigger fault before insert on piece when new.serial = 3
      begin select raise(abort, 'the third piece fails'); end`)
    const make = { designId, colourwayId, units: 4, placeId, madeOn: TODAY, note: '' }
    const answer = await studio.answer('makes.finish', make)
    expect(answer).toMatchObject({ ok: false, error: { code: 'internal' } })
    expect(await observe(studio)).toEqual(before)
    other.exec('drop trigger fault')
    other.close()
    expect((await studio.ask('makes.finish', make)).pieces).toHaveLength(4)
    await studio.close()
  })

  it('waits for the call under way before it closes', async () => {
    const studio = await openStudio(file)
    const begun = studio.ask('workshop.begin', {
      ...{ with: 'sample', name: 'Saltmarsh', currency: 'EUR', decimalMark: ',', today: TODAY },
    })
    await studio.close()
    await begun
    const again = await openStudio(file)
    expect((await again.ask('workshop.read', {})).workshop?.name).toBe('Saltmarsh')
    await again.close()
  })

  it('answers many calls at once one after the other, each on what the one before left', async () => {
    const shop = await openSmallWorkshop()
    const entered = await Promise.all(
      Array.from({ length: 8 }, () => shop.studio.ask('orders.save', { order: orderFor(shop, 1) })),
    )
    expect(entered.map(({ code }) => code)).toEqual(
      Array.from({ length: 8 }, (_, at) => `OR-000${at + 1}`),
    )
    await shop.studio.close()
  })

  it('computes without any file, and says that none is open', async () => {
    const service = await createService({ now: () => 0, newId, checkOutputs: true })
    expect(await service.answer('engine.read', { body: smallBody })).toMatchObject({
      ok: true,
      value: { beads: 20 },
    })
    expect(await service.answer('orders.list', { state: 'all' })).toMatchObject({
      ok: false,
      error: { code: 'no-file' },
    })
    await service.close()
  })

  it('notes the cause of an inner fault and tells the maker a sentence', async () => {
    const notes: string[] = []
    const service = await createService({
      file: ':memory:',
      now: () => {
        throw new Error('the clock stopped')
      },
      newId,
      log: (note) => notes.push(note),
    })
    expect(await service.answer('orders.list', { state: 'all' })).toMatchObject({
      ok: false,
      error: { code: 'internal' },
    })
    expect(notes.join()).toContain('the clock stopped')
    await service.close()
  })

  it('refuses a second writer’s lock after a while, in plain words', {
    timeout: 20_000,
  }, async () => {
    const shop = await openSmallWorkshop(file)
    const other = new BetterSqlite(file)
    other.exec('begin immediate')
    const refusal = await shop.studio.refused('orders.save', { order: orderFor(shop, 1) })
    expect(refusal).toMatchObject({ code: 'file-busy' })
    other.exec('rollback')
    other.close()
    expect((await shop.studio.ask('orders.save', { order: orderFor(shop, 1) })).code).toBe(
      'OR-0001',
    )
    await shop.studio.close()
  })

  it('sees what another studio has done on the same file', async () => {
    const shop = await openSmallWorkshop(file)
    const beside = await openStudio(file)
    for (let turn = 0; turn < 3; turn++) {
      await beside.ask('orders.save', { order: orderFor(shop, 1 + turn) })
      await shop.studio.ask('orders.save', { order: orderFor(shop, 2 + turn) })
      expect(await observe(beside)).toEqual(await observe(shop.studio))
    }
    await beside.close()
    await shop.studio.close()
  })

  it('writes a chart of beads into a file and finds it again byte by byte', async () => {
    const studio = await openSampleStudio(file)
    const chart = readFileSync(new URL('../../fixtures/samples/mudflat-chart.csv', import.meta.url))
    const preview = await studio.ask('chartFile.preview', {
      file: { fileName: 'mudflat-chart.csv', base64: chart.toString('base64') },
    })
    expect(preview.counts.reduce((sum, { count }) => sum + count, 0)).toBe(840)
    const body = (await studio.ask('designs.list', {})).designs.find(
      (design) => design.name === 'Mudflat band',
    )
    const whole = await studio.ask('designs.read', { id: body?.id ?? '' })
    const [part] = whole.body.parts
    expect(part?.kind === 'panel' && part.chart).toEqual(preview.chart)
    await studio.close()
  })
})
