import type { Kysely } from 'kysely'
import { inTransaction, runAll } from './in-transaction.ts'

/** A workshop's own bead forms and threads beside the reference tables. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await inTransaction(db, 40, (trx) => runAll(trx, statements))
}

const removedBy = 'removed_by TEXT REFERENCES action (id) DEFERRABLE INITIALLY DEFERRED'

/** A figure with its range and what it rests on. */
const spread = (name: string, unit: string) => `
    ${name}_low${unit} REAL NOT NULL CHECK (${name}_low${unit} >= 0),
    ${name}${unit} REAL NOT NULL CHECK (${name}${unit} >= ${name}_low${unit}),
    ${name}_high${unit} REAL NOT NULL CHECK (${name}_high${unit} >= ${name}${unit}),
    ${name}_basis TEXT NOT NULL CHECK (${name}_basis IN ('exact', 'measured', 'estimated'))`

const statements = [
  // form_id is what designs and materials name; one of the reference tables is replaced by it.
  `CREATE TABLE own_form (
    id TEXT PRIMARY KEY,
    form_id TEXT NOT NULL CHECK (form_id <> ''),
    name TEXT NOT NULL CHECK (name <> ''),
    family TEXT NOT NULL CHECK (family IN
      ('cylinder', 'rocaille', 'bugle', 'drop', 'two-hole', 'cube', 'faceted')),
    size_label TEXT NOT NULL,${spread('diameter', '_mm')},${spread('length', '_mm')},${spread('hole', '_mm')},${spread('beads_per_gram', '')},${spread('cull_rate', '')},
    ${removedBy},
    CHECK (hole_mm < diameter_mm),
    CHECK (cull_rate_high < 1)
  ) STRICT`,
  'CREATE UNIQUE INDEX own_form_by_form ON own_form (form_id) WHERE removed_by IS NULL',
  `CREATE TABLE own_thread (
    id TEXT PRIMARY KEY,
    thread_id TEXT NOT NULL CHECK (thread_id <> ''),
    name TEXT NOT NULL CHECK (name <> ''),
    construction TEXT NOT NULL CHECK (construction IN ('braided', 'twisted', 'flat', 'bonded')),${spread('diameter', '_mm')},
    tex REAL CHECK (tex > 0),
    ${removedBy}
  ) STRICT`,
  'CREATE UNIQUE INDEX own_thread_by_thread ON own_thread (thread_id) WHERE removed_by IS NULL',
]
