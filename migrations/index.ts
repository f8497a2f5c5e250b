import type { Migration } from 'kysely/migration'
import * as begin from './0010-begin.ts'
import * as drafts from './0020-drafts.ts'
import * as benchWork from './0030-bench-work.ts'
import * as ownTables from './0040-own-tables.ts'

/** Every migration in order, listed by hand so that a bundle carries them. Names never change. */
export const migrations: Readonly<Record<string, Migration>> = {
  '0010-begin': begin,
  '0020-drafts': drafts,
  '0030-bench-work': benchWork,
  '0040-own-tables': ownTables,
}

/** The number of the newest migration: the version a file has once it is up to date. */
export const latestVersion = Math.max(
  ...Object.keys(migrations).map((name) => Number.parseInt(name, 10)),
)
