// The first shape of the store in one piece; a table of statements, so longer than other files.
import type { Kysely } from 'kysely'
import { inTransaction, runAll } from './in-transaction.ts'

export async function up(db: Kysely<unknown>): Promise<void> {
  await inTransaction(db, 10, (trx) =>
    runAll(trx, [...history, ...workshop, ...stock, ...designs, ...orders, ...pieces, ...guards]),
  )
}

/** Set by the act that took a row away (or by the undoing of the act that made it); null while it counts. */
const removedBy = 'removed_by TEXT REFERENCES action (id) DEFERRABLE INITIALLY DEFERRED'
const byAction = 'action_id TEXT NOT NULL REFERENCES action (id) DEFERRABLE INITIALLY DEFERRED'
const flag = (name: string) => `${name} INTEGER NOT NULL CHECK (${name} IN (0, 1))`
const percent = (name: string) =>
  `${name} TEXT NOT NULL CHECK (CAST(${name} AS REAL) BETWEEN 0 AND 100)`
const day = (name: string) => `CHECK (${name} GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')`
const amount = (name: string) => `${name} INTEGER NOT NULL CHECK (${name} >= 0)`

/** A line of a ledger that takes back another carries its id, and the id of the first of the chain. */
const reversal = (table: string) => `
  head_id INTEGER REFERENCES ${table} (id),
  reverses_id INTEGER UNIQUE REFERENCES ${table} (id),
  CHECK ((head_id IS NULL) = (reverses_id IS NULL))`

const history = [
  `CREATE TABLE action (
    id TEXT PRIMARY KEY,
    seq INTEGER NOT NULL UNIQUE CHECK (seq > 0),
    at_ms INTEGER NOT NULL,
    call TEXT NOT NULL,
    label TEXT NOT NULL,
    ${flag('fixed')},
    state TEXT NOT NULL CHECK (state IN ('done', 'undone'))
  ) STRICT`,
  'CREATE INDEX action_by_state ON action (state, seq)',
  `CREATE TABLE change (
    ${byAction},
    seq INTEGER NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('insert', 'update', 'append')),
    table_name TEXT NOT NULL,
    row_id TEXT NOT NULL,
    before_json TEXT,
    after_json TEXT,
    PRIMARY KEY (action_id, seq),
    CHECK ((kind = 'update') = (before_json IS NOT NULL)),
    CHECK ((kind = 'update') = (after_json IS NOT NULL))
  ) STRICT`,
]

const workshop = [
  `CREATE TABLE workshop (
    id TEXT PRIMARY KEY CHECK (id = 'workshop'),
    name TEXT NOT NULL,
    currency TEXT NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
    decimal_mark TEXT NOT NULL CHECK (decimal_mark IN (',', '.')),
    ${amount('hourly_rate_minor')},
    overhead_kind TEXT NOT NULL CHECK (overhead_kind IN ('percent-of-labour', 'per-hour', 'per-piece')),
    overhead_percent TEXT CHECK (CAST(overhead_percent AS REAL) BETWEEN 0 AND 100),
    overhead_minor INTEGER CHECK (overhead_minor >= 0),
    costing_method TEXT NOT NULL CHECK (costing_method IN ('fifo', 'average')),
    ${percent('margin_percent')},
    price_step_minor INTEGER NOT NULL CHECK (price_step_minor > 0),
    scale_resolution_mg INTEGER NOT NULL CHECK (scale_resolution_mg > 0),
    tag_maker TEXT NOT NULL,
    tag_care TEXT NOT NULL,
    tag_caution TEXT NOT NULL,
    ${removedBy},
    CHECK ((overhead_kind = 'percent-of-labour') = (overhead_percent IS NOT NULL)),
    CHECK ((overhead_kind = 'percent-of-labour') = (overhead_minor IS NULL))
  ) STRICT`,
  `CREATE TABLE channel (
    id TEXT PRIMARY KEY,
    position INTEGER NOT NULL,
    name TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('market', 'web', 'consignment', 'wholesale', 'other')),
    ${percent('fee_percent')},
    ${amount('fee_fixed_minor')},
    ${percent('payment_percent')},
    ${amount('payment_fixed_minor')},
    fees_on TEXT NOT NULL CHECK (fees_on IN ('net', 'gross')),
    ${percent('tax_percent')},
    ${flag('tax_included')},
    ${removedBy}
  ) STRICT`,
  `CREATE TABLE place (
    id TEXT PRIMARY KEY,
    position INTEGER NOT NULL,
    name TEXT NOT NULL,
    channel_id TEXT REFERENCES channel (id),
    ${removedBy}
  ) STRICT`,
  `CREATE TABLE supplier (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    lead_days INTEGER NOT NULL CHECK (lead_days BETWEEN 0 AND 365),
    note TEXT NOT NULL,
    ${removedBy}
  ) STRICT`,
]

const stock = [
  `CREATE TABLE material (
    id TEXT PRIMARY KEY,
    code TEXT NOT NULL,
    name TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('bead', 'thread', 'finding', 'packaging')),
    unit TEXT NOT NULL CHECK (unit IN ('mg', 'mm', 'piece')),
    form_id TEXT,
    colour_hex TEXT CHECK (colour_hex GLOB '#[0-9a-f][0-9a-f][0-9a-f][0-9a-f][0-9a-f][0-9a-f]'),
    finish TEXT,
    ${flag('lots_matter')},
    low_at INTEGER CHECK (low_at >= 0),
    tare_mg INTEGER CHECK (tare_mg >= 0),
    drawer TEXT NOT NULL,
    note TEXT NOT NULL,
    declaration TEXT NOT NULL,
    ${removedBy}
  ) STRICT`,
  'CREATE UNIQUE INDEX material_by_code ON material (lower(code)) WHERE removed_by IS NULL',
  `CREATE TABLE lot (
    id TEXT PRIMARY KEY,
    material_id TEXT NOT NULL REFERENCES material (id),
    dye_lot TEXT NOT NULL,
    supplier_id TEXT REFERENCES supplier (id),
    bought_on TEXT ${day('bought_on')},
    cost_minor INTEGER CHECK (cost_minor >= 0),
    cost_quantity INTEGER CHECK (cost_quantity > 0),
    ${flag('weighed')},
    note TEXT NOT NULL,
    ${removedBy},
    CHECK ((cost_minor IS NULL) = (cost_quantity IS NULL))
  ) STRICT`,
  'CREATE INDEX lot_by_material ON lot (material_id)',
  // What is on hand of each lot and its value at cost: kept by a trigger, never written by hand.
  `CREATE TABLE lot_balance (
    lot_id TEXT PRIMARY KEY REFERENCES lot (id),
    on_hand INTEGER NOT NULL,
    value_minor INTEGER NOT NULL
  ) STRICT`,
  `CREATE TABLE offer (
    id TEXT PRIMARY KEY,
    material_id TEXT NOT NULL REFERENCES material (id),
    supplier_id TEXT NOT NULL REFERENCES supplier (id),
    pack_quantity INTEGER NOT NULL CHECK (pack_quantity > 0),
    ${amount('price_minor')},
    ${removedBy}
  ) STRICT`,
  'CREATE INDEX offer_by_material ON offer (material_id)',
  `CREATE TABLE weighing (
    id TEXT PRIMARY KEY,
    material_id TEXT NOT NULL REFERENCES material (id),
    at_ms INTEGER NOT NULL,
    beads INTEGER NOT NULL CHECK (beads > 0),
    gross_mg INTEGER NOT NULL,
    tare_mg INTEGER NOT NULL CHECK (tare_mg >= 0),
    scale_resolution_mg INTEGER NOT NULL CHECK (scale_resolution_mg > 0),
    ${removedBy},
    CHECK (gross_mg > tare_mg)
  ) STRICT`,
  'CREATE INDEX weighing_by_material ON weighing (material_id)',
]

const designs = [
  `CREATE TABLE design (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    tags_json TEXT NOT NULL CHECK (json_valid(tags_json)),
    ${flag('archived')},
    ${removedBy}
  ) STRICT`,
  `CREATE TABLE design_version (
    id TEXT PRIMARY KEY,
    design_id TEXT NOT NULL REFERENCES design (id),
    version INTEGER NOT NULL CHECK (version > 0),
    body_json TEXT NOT NULL CHECK (json_valid(body_json)),
    note TEXT NOT NULL,
    saved_at_ms INTEGER NOT NULL,
    ${removedBy}
  ) STRICT`,
  `CREATE UNIQUE INDEX design_version_by_number ON design_version (design_id, version)
    WHERE removed_by IS NULL`,
  // What the core read from a version, kept because reading is slow and a version never changes.
  `CREATE TABLE version_reading (
    version_id TEXT PRIMARY KEY REFERENCES design_version (id),
    edition INTEGER NOT NULL,
    reading_json TEXT NOT NULL CHECK (json_valid(reading_json))
  ) STRICT`,
  `CREATE TABLE colourway (
    id TEXT PRIMARY KEY,
    design_id TEXT NOT NULL REFERENCES design (id),
    position INTEGER NOT NULL,
    name TEXT NOT NULL,
    ${removedBy}
  ) STRICT`,
  'CREATE INDEX colourway_by_design ON colourway (design_id)',
  `CREATE TABLE colourway_material (
    id TEXT PRIMARY KEY,
    colourway_id TEXT NOT NULL REFERENCES colourway (id),
    key TEXT NOT NULL,
    material_id TEXT NOT NULL REFERENCES material (id),
    ${removedBy}
  ) STRICT`,
  `CREATE UNIQUE INDEX colourway_material_by_key ON colourway_material (colourway_id, key)
    WHERE removed_by IS NULL`,
  `CREATE TABLE set_price (
    id TEXT PRIMARY KEY,
    design_id TEXT NOT NULL REFERENCES design (id),
    colourway_id TEXT NOT NULL REFERENCES colourway (id),
    channel_id TEXT NOT NULL REFERENCES channel (id),
    price_minor INTEGER CHECK (price_minor >= 0),
    ${removedBy}
  ) STRICT`,
  `CREATE UNIQUE INDEX set_price_by_channel ON set_price (colourway_id, channel_id)
    WHERE removed_by IS NULL`,
]

const orders = [
  `CREATE TABLE sales_order (
    id TEXT PRIMARY KEY,
    serial INTEGER NOT NULL UNIQUE CHECK (serial > 0),
    customer TEXT NOT NULL,
    promised_on TEXT NOT NULL ${day('promised_on')},
    due_on TEXT NOT NULL ${day('due_on')},
    note TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('open', 'closed', 'cancelled')),
    ${removedBy}
  ) STRICT`,
  'CREATE INDEX sales_order_by_state ON sales_order (state, due_on)',
  `CREATE TABLE order_line (
    id TEXT PRIMARY KEY,
    order_id TEXT NOT NULL REFERENCES sales_order (id),
    position INTEGER NOT NULL,
    version_id TEXT NOT NULL REFERENCES design_version (id),
    colourway_id TEXT NOT NULL REFERENCES colourway (id),
    units INTEGER NOT NULL CHECK (units > 0),
    price_minor INTEGER CHECK (price_minor >= 0),
    ${removedBy}
  ) STRICT`,
  'CREATE INDEX order_line_by_order ON order_line (order_id)',
]

const pieces = [
  `CREATE TABLE make (
    id TEXT PRIMARY KEY,
    version_id TEXT NOT NULL REFERENCES design_version (id),
    colourway_id TEXT NOT NULL REFERENCES colourway (id),
    order_line_id TEXT REFERENCES order_line (id),
    units INTEGER NOT NULL CHECK (units > 0),
    made_on TEXT NOT NULL ${day('made_on')},
    bench_s INTEGER CHECK (bench_s >= 0),
    note TEXT NOT NULL,
    materials_minor INTEGER NOT NULL,
    labour_minor INTEGER NOT NULL,
    overhead_minor INTEGER NOT NULL,
    cost_minor INTEGER NOT NULL,
    ${removedBy},
    CHECK (cost_minor = materials_minor + labour_minor + overhead_minor)
  ) STRICT`,
  'CREATE INDEX make_by_order_line ON make (order_line_id)',
  `CREATE TABLE stock_movement (
    id INTEGER PRIMARY KEY,
    at_ms INTEGER NOT NULL,
    lot_id TEXT NOT NULL REFERENCES lot (id),
    quantity INTEGER NOT NULL,
    value_minor INTEGER NOT NULL,
    kind TEXT NOT NULL
      CHECK (kind IN ('opening', 'received', 'made', 'counted', 'weighed', 'returned', 'waste')),
    make_id TEXT REFERENCES make (id),
    note TEXT NOT NULL,
    ${byAction},
    ${reversal('stock_movement')}
  ) STRICT`,
  'CREATE INDEX stock_movement_by_lot ON stock_movement (lot_id, id)',
  'CREATE INDEX stock_movement_by_make ON stock_movement (make_id)',
  'CREATE INDEX stock_movement_by_head ON stock_movement (head_id)',
  `CREATE TABLE piece (
    id TEXT PRIMARY KEY,
    code TEXT NOT NULL,
    series TEXT NOT NULL,
    serial INTEGER NOT NULL CHECK (serial > 0),
    make_id TEXT NOT NULL REFERENCES make (id),
    cost_minor INTEGER NOT NULL,
    labour_minor INTEGER NOT NULL,
    bench_s INTEGER NOT NULL CHECK (bench_s >= 0),
    state TEXT NOT NULL CHECK (state IN ('here', 'reserved', 'sold', 'given', 'lost', 'unmade')),
    place_id TEXT REFERENCES place (id),
    sale_id INTEGER REFERENCES sale (id),
    ${removedBy},
    CHECK ((state = 'sold') = (sale_id IS NOT NULL))
  ) STRICT`,
  'CREATE UNIQUE INDEX piece_by_code ON piece (code)',
  'CREATE UNIQUE INDEX piece_by_series ON piece (series, serial)',
  'CREATE INDEX piece_by_make ON piece (make_id)',
  'CREATE INDEX piece_by_state ON piece (state)',
  `CREATE TABLE piece_movement (
    id INTEGER PRIMARY KEY,
    at_ms INTEGER NOT NULL,
    piece_id TEXT NOT NULL REFERENCES piece (id),
    kind TEXT NOT NULL CHECK (kind IN ('made', 'moved', 'reserved', 'released', 'sold', 'returned',
      'repaired', 'unmade', 'given', 'lost')),
    place_id TEXT REFERENCES place (id),
    note TEXT NOT NULL,
    ${byAction},
    ${reversal('piece_movement')}
  ) STRICT`,
  'CREATE INDEX piece_movement_by_piece ON piece_movement (piece_id, id)',
  'CREATE INDEX piece_movement_by_head ON piece_movement (head_id)',
  // A return is a line of its own day with the opposite amounts; units is 1 for a sale and -1 for it.
  `CREATE TABLE sale (
    id INTEGER PRIMARY KEY,
    at_ms INTEGER NOT NULL,
    piece_id TEXT NOT NULL REFERENCES piece (id),
    channel_id TEXT NOT NULL REFERENCES channel (id),
    units INTEGER NOT NULL CHECK (units IN (-1, 1)),
    sold_on TEXT NOT NULL ${day('sold_on')},
    price_minor INTEGER NOT NULL,
    tax_minor INTEGER NOT NULL,
    net_minor INTEGER NOT NULL,
    fees_minor INTEGER NOT NULL,
    cost_minor INTEGER NOT NULL,
    profit_minor INTEGER NOT NULL,
    returns_id INTEGER REFERENCES sale (id),
    note TEXT NOT NULL,
    ${byAction},
    ${reversal('sale')},
    CHECK (net_minor = fees_minor + cost_minor + profit_minor)
  ) STRICT`,
  'CREATE INDEX sale_by_piece ON sale (piece_id)',
  'CREATE INDEX sale_by_day ON sale (sold_on, channel_id)',
  'CREATE INDEX sale_by_head ON sale (head_id)',
]

function neverChanged(table: string, columns = ''): readonly string[] {
  const of = columns === '' ? '' : ` OF ${columns}`
  return [
    `CREATE TRIGGER ${table}_no_update BEFORE UPDATE${of} ON ${table}
      BEGIN SELECT RAISE(ABORT, '${table} is never changed'); END`,
    `CREATE TRIGGER ${table}_no_delete BEFORE DELETE ON ${table}
      BEGIN SELECT RAISE(ABORT, '${table} is never deleted'); END`,
  ]
}

/** A line that takes back another must be its exact opposite. */
function mirrors(table: string, same: string, opposite: readonly string[]): string {
  const differs = [
    `o.${same} <> NEW.${same}`,
    'coalesce(o.head_id, o.id) <> NEW.head_id',
    ...opposite.map((column) => `o.${column} <> -NEW.${column}`),
  ].join(' OR ')
  return `CREATE TRIGGER ${table}_mirrors BEFORE INSERT ON ${table} WHEN NEW.reverses_id IS NOT NULL
    BEGIN SELECT RAISE(ABORT, '${table}: a reversal is the exact opposite of its line')
      FROM ${table} AS o WHERE o.id = NEW.reverses_id AND (${differs}); END`
}

const guards = [
  ...neverChanged('stock_movement'),
  ...neverChanged('piece_movement'),
  ...neverChanged('sale'),
  ...neverChanged('change'),
  ...neverChanged('design_version', 'id, design_id, version, body_json, note, saved_at_ms'),
  ...neverChanged('action', 'id, seq, at_ms, call, label, fixed'),
  mirrors('stock_movement', 'lot_id', ['quantity', 'value_minor']),
  mirrors('piece_movement', 'piece_id', []),
  mirrors('sale', 'piece_id', [
    'units',
    'price_minor',
    'tax_minor',
    'net_minor',
    'fees_minor',
    'cost_minor',
    'profit_minor',
  ]),
  `CREATE TRIGGER stock_movement_balance AFTER INSERT ON stock_movement BEGIN
    INSERT INTO lot_balance (lot_id, on_hand, value_minor)
      VALUES (NEW.lot_id, NEW.quantity, NEW.value_minor)
      ON CONFLICT (lot_id) DO UPDATE SET
        on_hand = on_hand + excluded.on_hand,
        value_minor = value_minor + excluded.value_minor;
  END`,
]
