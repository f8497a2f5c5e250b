import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { APPLICATION_ID, checkFile } from '../../../../electron/service/store/check-file.ts'
import { openStore } from '../../../../electron/service/store/open-store.ts'
import { latestVersion } from '../../../../migrations/index.ts'
import { openEmptyStudio, openStudio } from '../open-studio.ts'

let folder = ''
let file = ''

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tallystrand-store-'))
  file = join(folder, 'workshop.tally')
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

async function makeWorkshop(): Promise<void> {
  const studio = await openEmptyStudio(file)
  await studio.close()
}

function change(sql: string): void {
  const db = new BetterSqlite(file)
  db.exec(sql)
  db.close()
}

/** Refused, with every byte and every file beside it as they were. */
async function expectUntouched(code: string): Promise<void> {
  const bytes = readFileSync(file)
  const beside = readdirSync(folder).toSorted()
  const opened = await openStore(file)
  expect(opened).toMatchObject({ ok: false, error: { code } })
  expect(readFileSync(file).equals(bytes)).toBe(true)
  expect(readdirSync(folder).toSorted()).toEqual(beside)
}

describe('openStore', () => {
  it('makes a new file that is ours, up to date and durable', async () => {
    await makeWorkshop()
    const db = new BetterSqlite(file, { readonly: true })
    expect(db.pragma('application_id', { simple: true })).toBe(APPLICATION_ID)
    expect(db.pragma('user_version', { simple: true })).toBe(latestVersion)
    expect(db.pragma('journal_mode', { simple: true })).toBe('wal')
    db.close()
  })

  it('has all tables in the file itself from the first moment, also if nobody closes it', async () => {
    const opened = await openStore(file)
    const copy = join(folder, 'copy.tally')
    copyFileSync(file, copy)
    expect(checkFile(copy, latestVersion)).toEqual({ kind: 'ours', version: latestVersion })
    const again = await openStore(copy)
    expect(again.ok).toBe(true)
    if (again.ok) await again.value.close()
    expect(statSync(`${file}-wal`).size).toBe(0)
    if (opened.ok) await opened.value.close()
  })

  it('takes a file of no bytes for a new one', async () => {
    writeFileSync(file, '')
    const opened = await openStore(file)
    expect(opened.ok).toBe(true)
    if (opened.ok) await opened.value.close()
  })

  it('refuses what is no database, untouched', async () => {
    writeFileSync(file, 'Artikel-Nr;Bezeichnung\r\n'.repeat(40))
    await expectUntouched('not-a-workshop-file')
  })

  it('refuses a few stray bytes, untouched', async () => {
    writeFileSync(file, 'SQLite')
    await expectUntouched('not-a-workshop-file')
  })

  it('refuses another program’s database, untouched', async () => {
    change('create table notes (text); pragma user_version = 3')
    await expectUntouched('another-programs-file')
  })

  it('refuses a newer version’s file, untouched', async () => {
    await makeWorkshop()
    change(`pragma user_version = ${latestVersion + 10}`)
    await expectUntouched('newer-version')
  })

  it('refuses a newer version that stands only in the log beside the file, untouched', async () => {
    await makeWorkshop()
    const copy = join(folder, 'copied.tally')
    const db = new BetterSqlite(file)
    db.pragma('wal_autocheckpoint = 0')
    db.pragma(`user_version = ${latestVersion + 10}`)
    // Copied while it is open, as a crash leaves it: the newer version is in the log alone.
    copyFileSync(file, copy)
    copyFileSync(`${file}-wal`, `${copy}-wal`)
    db.close()
    const [bytes, log] = [readFileSync(copy), readFileSync(`${copy}-wal`)]
    const opened = await openStore(copy)
    expect(opened).toMatchObject({ ok: false, error: { code: 'newer-version' } })
    expect(readFileSync(copy).equals(bytes)).toBe(true)
    expect(readFileSync(`${copy}-wal`).equals(log)).toBe(true)
  })

  it('refuses a folder, and a file in a folder that is not there', async () => {
    expect(await openStore(folder)).toMatchObject({ ok: false, error: { code: 'not-a-file' } })
    const lost = await openStore(join(folder, 'gone', 'workshop.tally'))
    expect(lost).toMatchObject({ ok: false, error: { code: 'file-not-reached' } })
  })

  it('refuses a damaged file and does not change it', async () => {
    await makeWorkshop()
    const bytes = readFileSync(file)
    bytes.fill(0x5a, 4_096, 4_096 * 6)
    writeFileSync(file, bytes)
    const opened = await openStore(file)
    expect(opened).toMatchObject({ ok: false, error: { code: 'damaged-file' } })
    expect(readFileSync(file).equals(bytes)).toBe(true)
  })

  it('copies a file from an older version before it changes it', async () => {
    await makeWorkshop()
    change('pragma user_version = 5')
    const opened = await openStore(file)
    expect(opened.ok && opened.value.copiedTo).toBe(`${file}.version-5.copy`)
    if (opened.ok) await opened.value.close()
    const copy = new BetterSqlite(`${file}.version-5.copy`, { readonly: true })
    expect(copy.pragma('integrity_check', { simple: true })).toBe('ok')
    expect(copy.prepare('select name from workshop').get()).toEqual({ name: 'Saltmarsh Beadworks' })
    copy.close()
  })

  it('leaves no copy beside a file that is up to date', async () => {
    await makeWorkshop()
    const opened = await openStore(file)
    if (opened.ok) await opened.value.close()
    expect(readdirSync(folder)).toEqual(['workshop.tally'])
    expect(existsSync(`${file}-wal`)).toBe(false)
  })
})

describe('a studio whose file was refused', () => {
  it('answers every call that needs the file with why, and computes all the same', async () => {
    writeFileSync(file, 'no database at all')
    const studio = await openStudio(file)
    expect(await studio.refused('workshop.read', {})).toMatchObject({ code: 'not-a-workshop-file' })
    const chart = { fileName: 'a.csv', base64: Buffer.from('# brick\n0;A,B\n').toString('base64') }
    expect((await studio.ask('chartFile.preview', { file: chart })).counts).toHaveLength(2)
    await studio.close()
  })
})
