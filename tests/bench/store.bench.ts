import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { coverPromises } from '../../electron/service/cover-promises.ts'
import { listOpenLines } from '../../electron/service/promises.ts'
import { createService, type Service } from '../../electron/service/service.ts'
import { openDriver } from '../../electron/service/store/driver.ts'
import { openStore } from '../../electron/service/store/open-store.ts'
import { fillStore } from '../fixtures/fill-store.ts'
import { benchSize, generateWorkshop } from '../fixtures/workshop-generator.ts'
import { medianOf, type Row } from './row.ts'

export const name = 'Cover of all open orders, from the store'

/** Until the compiled code is measured and not its warming up. */
const WARM_UP = 40
const ROUNDS = 31

/** Every row that cover is computed from, read the barest way there is. Packs on offer are no part of it. */
const READS = [
  `select l.id, l.order_id, l.version_id, l.colourway_id, l.units, l.position, o.due_on,
     o.promised_on, o.serial, coalesce(m.units, 0)
     from sales_order o join order_line l on l.order_id = o.id
     left join (select order_line_id, sum(units) as units from make
       where order_line_id is not null and removed_by is null group by order_line_id) m
       on m.order_line_id = l.id
     where o.state = 'open' and o.removed_by is null and l.removed_by is null
     order by o.serial, l.position`,
  `select id, name, unit, form_id, lots_matter, colour_hex, drawer from material
     where removed_by is null`,
  'select * from weighing where removed_by is null order by at_ms, id',
  'select colourway_id, key, material_id from colourway_material where removed_by is null',
  'select version_id, reading_json from version_reading',
  `select l.id, l.material_id, l.bought_on, b.on_hand
     from lot l join lot_balance b on b.lot_id = l.id where l.removed_by is null`,
] as const

/**
 * Cover of every open order over a real file, against the bare reads of the same rows on the same
 * file, measured in turns; and the whole call, which words every shortage for the screen.
 */
export async function run(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'tallystrand-bench-'))
  const file = join(folder, 'bench.db')
  try {
    await makeStore(file)
    return toRows(await measure(file))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

async function makeStore(file: string): Promise<void> {
  const opened = await openStore(file)
  if (!opened.ok) throw new Error(opened.error.message)
  await opened.value.close()
  const driver = openDriver(file)
  await fillStore(driver, generateWorkshop(benchSize))
  await driver.close()
}

type Times = Readonly<{ bare: number[]; cover: number[]; call: number[] }>

async function measure(file: string): Promise<Times> {
  const reads = openReads(file)
  const cover = await openCover(file)
  const service = await createService({ file, now: () => 0, newId: (prefix) => `${prefix}_000000` })
  const times: Times = { bare: [], cover: [], call: [] }
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    const bare = await timed(async () => reads.all())
    const covered = await timed(cover.all)
    if (round < 0) continue
    times.bare.push(bare)
    times.cover.push(covered)
  }
  // Apart from the others, which would have to clear away the words of thousands of shortages.
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    const called = await timed(() => callCover(service))
    if (round >= 0) times.call.push(called)
  }
  reads.close()
  await cover.close()
  await service.close()
  return times
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now()
  await work()
  return performance.now() - start
}

function openReads(file: string) {
  const db = new BetterSqlite(file, { readonly: true })
  const statements = READS.map((sql) => db.prepare(sql))
  return {
    all: () => statements.reduce((rows, statement) => rows + statement.all().length, 0),
    close: () => db.close(),
  }
}

async function openCover(file: string) {
  const opened = await openStore(file)
  if (!opened.ok) throw new Error(opened.error.message)
  const { db, close } = opened.value
  const memory = new Map()
  return {
    all: () =>
      db.transaction().execute(async (trx) => {
        const view = { trx, memory }
        return coverPromises(view, await listOpenLines(view))
      }),
    close,
  }
}

async function callCover(service: Service): Promise<void> {
  const answer = await service.answer('orders.coverAll', { today: '2026-03-14' })
  if (!answer.ok) throw new Error(answer.error.message)
}

const BASELINE = 'bare SQL reads of the same rows'

function toRows({ bare, cover, call }: Times): Row[] {
  const { orders, designs, materials } = benchSize
  const size = `${orders} orders over ${designs} designs and ${materials} materials`
  return [
    { measure: BASELINE, n: ROUNDS, ...medianOf(bare) },
    {
      measure: `cover of ${size}, from the store`,
      n: ROUNDS,
      ...medianOf(cover),
      baseline: BASELINE,
      target: 3,
    },
    {
      measure: 'the same as a call, every shortage worded',
      n: ROUNDS,
      ...medianOf(call),
      baseline: BASELINE,
    },
  ]
}
