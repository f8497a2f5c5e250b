import { existsSync, statSync } from 'node:fs'
import { basename } from 'node:path'
import type { Kysely } from 'kysely'
import { latestVersion, migrations } from '../../../migrations/index.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'
import { err, ok, type Result } from '../../../shared-core/result.ts'
import { environmentFault } from '../environment-fault.ts'
import { APPLICATION_ID, checkFile, newerVersion } from './check-file.ts'
import type { Database } from './database.ts'
import { type Driver, openDriver, peekVersion, setUpConnection } from './driver.ts'
import { migrate } from './migrate.ts'

/** A store that is open, up to date and whole. */
export type Store = Readonly<{
  db: Kysely<Database>
  close: () => Promise<void>
  /** The copy made before the file was brought up to date, if it had to be. */
  copiedTo?: string
}>

// Checking reads the whole file: quick up to here, and larger files are checked by their backups.
const CHECKED_UP_TO_BYTES = 64 * 1024 * 1024

/**
 * Opens a workshop's file, makes a new one, or refuses with the file left as it is.
 *
 * Refused: a file that is no database, another program's, a newer version's, a damaged one, and what
 * the machine does not allow. A file from an older version is copied, then brought up to date.
 */
export async function openStore(file: string): Promise<Result<Store, Refusal>> {
  const inMemory = file === ':memory:'
  try {
    if (inMemory) return ok(await setUp(openDriver(file), { file, fresh: true }))
    const check = checkFile(file, latestVersion)
    if (check.kind === 'refused') return err(check.refusal)
    const fresh = check.kind === 'new'
    if (!fresh && hasLog(file) && peekVersion(file) > latestVersion) return err(newerVersion(file))
    return await openFile(file, fresh)
  } catch (cause) {
    return err(environmentFault(cause) ?? rethrow(cause))
  }
}

async function openFile(file: string, fresh: boolean): Promise<Result<Store, Refusal>> {
  const driver = openDriver(file)
  try {
    if (!fresh && !isWhole(driver, file)) {
      await driver.close()
      return err(damaged(file))
    }
    return ok(await setUp(driver, { file, fresh }))
  } catch (cause) {
    await driver.close()
    throw cause
  }
}

async function setUp(
  driver: Driver,
  { file, fresh }: Readonly<{ file: string; fresh: boolean }>,
): Promise<Store> {
  // Before the log is switched on, so that the mark stands in the file itself from the first moment.
  if (fresh) driver.pragma(`application_id = ${APPLICATION_ID}`)
  setUpConnection(driver, file === ':memory:')
  const version = Number(driver.pragma('user_version'))
  const isBehind = version < latestVersion
  const copied = isBehind && !fresh ? await copyBeforeMigration(driver, file, version) : undefined
  // Asked only then: to find nothing to do, the migrator reads the shape of every table.
  if (isBehind) {
    await migrate(driver, migrations)
    // Out of the log and into the file, so that no later start has to do it, and a copy has it all.
    driver.pragma('wal_checkpoint(truncate)')
  }
  return {
    db: driver.db,
    close: driver.close,
    ...(copied === undefined ? {} : { copiedTo: copied }),
  }
}

async function copyBeforeMigration(driver: Driver, file: string, version: number): Promise<string> {
  const target = freeName(`${file}.version-${version}`)
  await driver.copyTo(target)
  return target
}

function freeName(stem: string): string {
  let name = `${stem}.copy`
  for (let number = 2; existsSync(name); number += 1) name = `${stem}-${number}.copy`
  return name
}

function hasLog(file: string): boolean {
  const log = `${file}-wal`
  return existsSync(log) && statSync(log).size > 0
}

function isWhole(driver: Driver, file: string): boolean {
  if (statSync(file).size > CHECKED_UP_TO_BYTES) return true
  // `pragma` gives the first value found: `ok`, and no row at all for no loose reference.
  return driver.pragma('quick_check') === 'ok' && driver.pragma('foreign_key_check') === undefined
}

function damaged(file: string): Refusal {
  return {
    code: 'damaged-file',
    message: `${basename(file)} is damaged. Nothing in it was changed.`,
    next: 'Open your latest backup, and keep the damaged file: much of it can often be read.',
  }
}

function rethrow(cause: unknown): never {
  throw cause
}
