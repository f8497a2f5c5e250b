import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openSampleStudio } from '../open-studio.ts'

const folder = mkdtempSync(join(tmpdir(), 'tallystrand-ledgers-'))
let db: BetterSqlite.Database

beforeAll(async () => {
  const file = join(folder, 'sample.tally')
  await (await openSampleStudio(file)).close()
  db = new BetterSqlite(file)
  db.pragma('foreign_keys = on')
})
afterAll(() => {
  db.close()
  rmSync(folder, { recursive: true, force: true })
})

const rows = (sql: string) => db.prepare(sql).all()
const LEDGERS = ['stock_movement', 'piece_movement', 'sale'] as const

describe('the ledgers', () => {
  it.each([...LEDGERS, 'change'])('%s takes no change and loses no line', (table) => {
    expect(() => db.exec(`update ${table} set rowid = rowid`)).toThrow(`${table} is never changed`)
    expect(() => db.exec(`delete from ${table}`)).toThrow(`${table} is never deleted`)
  })

  it.each([
    ['stock_movement', 'quantity = -quantity + 1'],
    ['stock_movement', 'value_minor = -value_minor + 1'],
    ['sale', 'price_minor = -price_minor + 1, net_minor = net_minor'],
  ])('%s takes back a line only by its exact opposite (%s)', (table) => {
    const names = (rows(`pragma table_info(${table})`) as { name: string }[])
      .map(({ name }) => name)
      .filter((name) => name !== 'id')
    const values = names.map((name) => (name === 'head_id' || name === 'reverses_id' ? 'id' : name))
    const insert = `insert into ${table} (${names}) select ${values} from ${table} limit 1`
    expect(() => db.exec(insert)).toThrow('exact opposite')
  })

  it('design versions never change', () => {
    expect(() => db.exec(`update design_version set body_json = '{}'`)).toThrow('never changed')
    expect(() => db.exec('delete from design_version')).toThrow('never deleted')
  })

  it('has no row that points nowhere and no broken page', () => {
    expect(rows('pragma foreign_key_check')).toEqual([])
    expect(db.pragma('integrity_check', { simple: true })).toBe('ok')
    expect(() =>
      db.exec(
        `insert into lot values ('lot_x', 'mat_gone', '', null, null, null, null, 1, '', null)`,
      ),
    ).toThrow('FOREIGN KEY')
  })

  it('is strict: a word is no number and a fraction is no whole one', () => {
    const set = (value: string) => () => db.exec(`update lot_balance set on_hand = ${value}`)
    expect(set(`'abc'`)).toThrow('cannot store TEXT value in INTEGER column')
    expect(set('1.5')).toThrow('cannot store REAL value in INTEGER column')
    const tables = rows(`pragma table_list`) as { name: string; strict: number; schema: string }[]
    const own = tables.filter(({ name }) => !/^(sqlite_|kysely_)/.test(name))
    expect(own.filter(({ strict }) => strict === 0)).toEqual([])
  })
})

describe('sums of the sample', () => {
  it('on hand and value of every lot are the sums of its movements', () => {
    expect(
      rows(`select l.id from lot l left join lot_balance b on b.lot_id = l.id
        where coalesce(b.on_hand, 0) <> (select coalesce(sum(quantity), 0) from stock_movement where lot_id = l.id)
          or coalesce(b.value_minor, 0) <> (select coalesce(sum(value_minor), 0) from stock_movement where lot_id = l.id)`),
    ).toEqual([])
  })

  it('no lot is below zero', () => {
    expect(rows('select * from lot_balance where on_hand < 0')).toEqual([])
  })

  it('what each make took out of the stock is what it says its materials cost', () => {
    expect(
      rows(`select m.id from make m
        where m.materials_minor <> -(select sum(value_minor) from stock_movement where make_id = m.id)`),
    ).toEqual([])
  })

  it('the pieces of each make carry exactly its cost, one for each unit', () => {
    expect(
      rows(`select m.id from make m join piece p on p.make_id = m.id group by m.id
        having sum(p.cost_minor) <> m.cost_minor or sum(p.labour_minor) <> m.labour_minor
          or count(*) <> m.units`),
    ).toEqual([])
  })

  it('value in, less value out, is the value of the stock', () => {
    const [sums] = rows(`select
        (select sum(value_minor) from stock_movement where quantity > 0) as came,
        (select sum(value_minor) from stock_movement where quantity < 0) as went,
        (select sum(value_minor) from lot_balance) as stands`) as {
      came: number
      went: number
      stands: number
    }[]
    expect((sums?.came ?? 0) + (sums?.went ?? 0)).toBe(sums?.stands)
    expect(sums?.went).toBeLessThan(0)
  })

  it('each sold piece stands in one sale that was not returned, at its own cost', () => {
    expect(
      rows(`select p.id from piece p left join sale s on s.id = p.sale_id
        where (p.state = 'sold') <> (s.id is not null and s.cost_minor = p.cost_minor
          and not exists (select 1 from sale r where r.returns_id = s.id))`),
    ).toEqual([])
  })

  it('the parts of each sale sum to what the buyer paid', () => {
    expect(
      rows(`select s.id from sale s join channel c on c.id = s.channel_id
        where s.price_minor <> s.net_minor + case c.tax_included when 1 then s.tax_minor else 0 end
          or s.net_minor <> s.fees_minor + s.cost_minor + s.profit_minor`),
    ).toEqual([])
  })
})
