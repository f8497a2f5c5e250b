import type { Kysely } from 'kysely'
import { inTransaction, runAll } from './in-transaction.ts'

/** Work under way at the bench, the lots it draws from, and which timed makes teach the workshop's pace. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await inTransaction(db, 30, (trx) => runAll(trx, statements))
}

const removedBy = 'removed_by TEXT REFERENCES action (id) DEFERRABLE INITIALLY DEFERRED'

const statements = [
  `ALTER TABLE make ADD COLUMN left_out INTEGER NOT NULL DEFAULT 0 CHECK (left_out IN (0, 1))`,
  // The columns from copy_at to kept_at_ms follow the hand outside the history; acts never touch them.
  `CREATE TABLE bench_work (
    id TEXT PRIMARY KEY,
    version_id TEXT NOT NULL REFERENCES design_version (id),
    colourway_id TEXT NOT NULL REFERENCES colourway (id),
    order_line_id TEXT REFERENCES order_line (id),
    units INTEGER NOT NULL CHECK (units > 0),
    begun_on TEXT NOT NULL CHECK (begun_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    before_json TEXT NOT NULL CHECK (json_valid(before_json)),
    copy_at INTEGER NOT NULL CHECK (copy_at >= 0),
    part_at INTEGER NOT NULL CHECK (part_at >= 0),
    step_at INTEGER NOT NULL CHECK (step_at >= 0),
    units_done INTEGER NOT NULL CHECK (units_done BETWEEN 0 AND units),
    worked_s INTEGER NOT NULL CHECK (worked_s >= 0),
    resting INTEGER NOT NULL CHECK (resting IN (0, 1)),
    kept_at_ms INTEGER NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('open', 'done', 'given-up')),
    make_id TEXT REFERENCES make (id),
    log_json TEXT CHECK (json_valid(log_json)),
    note TEXT NOT NULL,
    ${removedBy},
    CHECK ((state = 'done') = (make_id IS NOT NULL)),
    CHECK ((state = 'done') = (log_json IS NOT NULL))
  ) STRICT`,
  'CREATE INDEX bench_work_by_state ON bench_work (state)',
  'CREATE INDEX bench_work_by_make ON bench_work (make_id)',
  // What work under way holds of a lot, in the material's unit; nothing once it is done or given up.
  `CREATE TABLE bench_hold (
    id TEXT PRIMARY KEY,
    work_id TEXT NOT NULL REFERENCES bench_work (id),
    material_id TEXT NOT NULL REFERENCES material (id),
    lot_id TEXT NOT NULL REFERENCES lot (id),
    quantity INTEGER NOT NULL CHECK (quantity > 0),
    ${removedBy}
  ) STRICT`,
  'CREATE INDEX bench_hold_by_work ON bench_hold (work_id)',
]
