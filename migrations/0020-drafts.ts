import type { Kysely } from 'kysely'
import { inTransaction, runAll } from './in-transaction.ts'

/** What lies on the drawing table of each design, stroke by stroke, so that undo outlives the window. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await inTransaction(db, 20, (trx) => runAll(trx, drafts))
}

const drafts = [
  // The body as it stands now is kept whole: opening a long drawing does not draw it again.
  `CREATE TABLE draft (
    design_id TEXT PRIMARY KEY REFERENCES design (id),
    body_json TEXT NOT NULL CHECK (json_valid(body_json)),
    position INTEGER NOT NULL CHECK (position BETWEEN 0 AND count),
    count INTEGER NOT NULL CHECK (count >= 0),
    saved_version_id TEXT NOT NULL REFERENCES design_version (id),
    saved_position INTEGER CHECK (saved_position BETWEEN 0 AND count)
  ) STRICT`,
  `CREATE TABLE draft_stroke (
    design_id TEXT NOT NULL REFERENCES draft (design_id),
    seq INTEGER NOT NULL CHECK (seq > 0),
    label TEXT NOT NULL,
    redo_json TEXT NOT NULL CHECK (json_valid(redo_json)),
    undo_json TEXT NOT NULL CHECK (json_valid(undo_json)),
    PRIMARY KEY (design_id, seq)
  ) STRICT`,
]
