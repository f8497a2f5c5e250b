import type { Transaction } from 'kysely'
import type { Database } from './database.ts'
import type { VersionFacts } from './facts.ts'

/** One consistent view of the store, and what this store's process remembers of its versions. */
export type View = Readonly<{
  trx: Transaction<Database>
  /** Facts of versions by id: a version never changes, and its facts name the own figures they rest on. */
  memory: Map<string, VersionFacts>
}>
