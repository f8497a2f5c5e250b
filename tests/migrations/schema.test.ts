import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import BetterSqlite from 'better-sqlite3'
import { Kysely, SqliteDialect } from 'kysely'
import { Migrator } from 'kysely/migration'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { latestVersion, migrations } from '../../migrations/index.ts'

const snapshot = new URL('./schema.snapshot.sql', import.meta.url)
const names = Object.keys(migrations)
let db: BetterSqlite.Database

beforeAll(async () => {
  db = new BetterSqlite(':memory:')
  const kysely = new Kysely<unknown>({ dialect: new SqliteDialect({ database: db }) })
  const provider = { getMigrations: async () => ({ ...migrations }) }
  const { error } = await new Migrator({ db: kysely, provider }).migrateToLatest()
  if (error !== undefined) throw error
})
afterAll(() => {
  db.close()
})

function schema(): string {
  const rows = db
    .prepare(
      `select sql from sqlite_schema where sql is not null and name not like 'kysely%'
        order by type, name`,
    )
    .pluck()
    .all() as string[]
  return `${rows.map((sql) => `${sql.replace(/\s+/g, ' ')};`).join('\n')}\n`
}

describe('the migrations', () => {
  // A wanted change: remove the snapshot, run this once, and read what it now says.
  it('lead to the schema that stands in the snapshot', () => {
    if (!existsSync(snapshot)) writeFileSync(snapshot, schema())
    expect(schema()).toBe(readFileSync(snapshot, 'utf8'))
  })

  it('are numbered by tens and stand in order', () => {
    const numbers = names.map((name) => Number.parseInt(name, 10))
    expect(numbers.every((number) => number > 0 && number % 10 === 0)).toBe(true)
    expect(new Set(numbers).size).toBe(numbers.length)
    expect(names.every((name) => /^\d{4}-[a-z][a-z-]+$/.test(name))).toBe(true)
    expect(names).toEqual(names.toSorted())
  })

  it('stamp the file with the newest number', () => {
    expect(db.pragma('user_version', { simple: true })).toBe(latestVersion)
  })

  it('make strict tables only', () => {
    const tables = db.pragma('table_list') as { name: string; type: string; strict: number }[]
    const loose = tables.filter(
      ({ name, type, strict }) =>
        type === 'table' && strict === 0 && !/^(sqlite|kysely)_/.test(name),
    )
    expect(loose).toEqual([])
  })
})
