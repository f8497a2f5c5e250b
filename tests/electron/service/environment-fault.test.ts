import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { environmentFault } from '../../../electron/service/environment-fault.ts'

/** What the database itself throws when something is done to it. */
function thrownBy(work: (db: BetterSqlite.Database) => void, options: BetterSqlite.Options = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'tallystrand-fault-'))
  const file = join(folder, 'a.db')
  new BetterSqlite(file).exec('create table t (x)').close()
  const db = new BetterSqlite(file, options)
  try {
    work(db)
    throw new Error('expected a fault')
  } catch (cause) {
    return cause
  } finally {
    db.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

describe('environmentFault', () => {
  it('knows a full disk', () => {
    const cause = thrownBy((db) => {
      db.pragma('max_page_count = 4')
      for (let n = 0; n < 100; n++) db.exec(`insert into t values (zeroblob(4000))`)
    })
    expect(environmentFault(cause)).toMatchObject({ code: 'disk-full' })
  })

  it('knows a file that may not be written', () => {
    const cause = thrownBy((db) => db.exec('insert into t values (1)'), { readonly: true })
    expect(environmentFault(cause)).toMatchObject({ code: 'file-not-writable' })
  })

  it('knows a file that cannot be reached', () => {
    const cause = thrownBy(() => new BetterSqlite('/', { fileMustExist: true }))
    expect(environmentFault(cause)).toMatchObject({ code: 'file-not-reached' })
  })

  it.each([
    ['SQLITE_BUSY', 'file-busy'],
    ['SQLITE_CORRUPT_VTAB', 'damaged-file'],
    ['SQLITE_IOERR_FSYNC', 'disk-fault'],
    ['ENOSPC', 'disk-full'],
    ['EACCES', 'file-not-writable'],
  ])('knows %s', (code, expected) => {
    expect(environmentFault(Object.assign(new Error(), { code }))).toMatchObject({ code: expected })
  })

  it.each([
    new Error('a bug'),
    Object.assign(new Error(), { code: 'SQLITE_CONSTRAINT' }),
    null,
    'x',
  ])('leaves a bug a bug', (cause) => expect(environmentFault(cause)).toBeUndefined())
})
