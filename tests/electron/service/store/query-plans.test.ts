import { sql } from 'kysely'
import { describe, expect, it } from 'vitest'
import { openStore } from '../../../../electron/service/store/open-store.ts'

const HOT: readonly (readonly [name: string, query: string, uses: string])[] = [
  [
    'open orders',
    `select id from sales_order where state = 'open' and removed_by is null`,
    'SEARCH sales_order USING INDEX sales_order_by_state',
  ],
  [
    'lines of an order',
    `select id from order_line where order_id = 'x' and removed_by is null`,
    'SEARCH order_line USING INDEX order_line_by_order',
  ],
  [
    'movements of a lot',
    `select id from stock_movement where lot_id = 'x' order by id desc`,
    'SEARCH stock_movement USING COVERING INDEX stock_movement_by_lot',
  ],
  [
    'lots of a material',
    `select id from lot where material_id = 'x'`,
    'SEARCH lot USING INDEX lot_by_material',
  ],
  [
    'the balance of a lot',
    `select on_hand from lot_balance where lot_id = 'x'`,
    'SEARCH lot_balance USING INDEX sqlite_autoindex_lot_balance_1',
  ],
  [
    'a version by its number',
    `select id from design_version where design_id = 'x' and version = 1 and removed_by is null`,
    'SEARCH design_version USING INDEX design_version_by_number',
  ],
  [
    'what fills a colourway',
    `select key from colourway_material where colourway_id = 'x' and removed_by is null`,
    'SEARCH colourway_material USING INDEX colourway_material_by_key',
  ],
  [
    'makes of an order line',
    `select units from make where order_line_id = 'x'`,
    'SEARCH make USING INDEX make_by_order_line',
  ],
  [
    'pieces on the shelf',
    `select id from piece where state in ('here', 'reserved')`,
    'SEARCH piece USING INDEX piece_by_state',
  ],
  [
    'sales of a month',
    `select sum(price_minor) from sale where sold_on between '2026-11-01' and '2026-11-30'`,
    'SEARCH sale USING INDEX sale_by_day',
  ],
  [
    'what took a movement back',
    'select id from stock_movement where head_id = 1',
    'SEARCH stock_movement USING COVERING INDEX stock_movement_by_head',
  ],
  [
    'the latest step',
    `select id from action where state = 'done' order by seq desc limit 1`,
    'SEARCH action USING INDEX action_by_state',
  ],
]

describe('hot queries', () => {
  it.each(HOT)('%s is found by an index', async (_, query, uses) => {
    const opened = await openStore(':memory:')
    if (!opened.ok) throw new Error(opened.error.message)
    const { db, close } = opened.value
    const plan = await sql.raw<{ detail: string }>(`explain query plan ${query}`).execute(db)
    await close()
    const details = plan.rows.map((row) => row.detail)
    expect(
      details.some((detail) => detail.startsWith(uses)),
      details.join('; '),
    ).toBe(true)
    expect(details.filter((detail) => /TEMP B-TREE|^SCAN/.test(detail))).toEqual([])
  })
})
