import { describe, expect, it } from 'vitest'
import { openDriver } from '../../electron/service/store/driver.ts'
import { migrate } from '../../electron/service/store/migrate.ts'
import { inTransaction, runAll } from '../../migrations/in-transaction.ts'
import { migrations } from '../../migrations/index.ts'

const tables = (driver: ReturnType<typeof openDriver>) =>
  driver.db.introspection.getTables().then((all) => all.map(({ name }) => name).toSorted())

describe('0010-begin', () => {
  it('makes every table the store’s types name', async () => {
    const driver = openDriver(':memory:')
    await migrate(driver, migrations, '0010-begin')
    expect(await tables(driver)).toEqual([
      ...['action', 'change', 'channel', 'colourway', 'colourway_material', 'design'],
      ...['design_version', 'lot', 'lot_balance', 'make', 'material', 'offer', 'order_line'],
      ...['piece', 'piece_movement', 'place', 'sale', 'sales_order', 'set_price'],
      ...['stock_movement', 'supplier', 'version_reading', 'weighing', 'workshop'],
    ])
    expect(driver.pragma('foreign_keys')).toBe(1)
    await driver.close()
  })
})

describe('a migration after it', () => {
  const later = (statements: readonly string[]) => ({
    ...migrations,
    '9990-later': {
      up: (db: Parameters<typeof inTransaction>[0]) =>
        inTransaction(db, 9_990, (trx) => runAll(trx, statements)),
    },
  })
  const insertPlace = `insert into place values ('pla_000001', 1, 'Drawer', null, null)`

  it('finds what was written before it', async () => {
    const driver = openDriver(':memory:')
    await migrate(driver, migrations)
    await runAll(driver.db as never, [insertPlace])
    await migrate(driver, later([`alter table place add column shelf text not null default 'top'`]))
    expect(await driver.db.selectFrom('place').selectAll().execute()).toEqual([
      {
        id: 'pla_000001',
        position: 1,
        name: 'Drawer',
        channel_id: null,
        removed_by: null,
        shelf: 'top',
      },
    ])
    expect(driver.pragma('user_version')).toBe(9_990)
    await driver.close()
  })

  it.each([
    ['fails in the middle', ['create table half (a text) strict', 'select nothing from nowhere']],
    [
      'leaves a loose reference',
      [
        'create table half (a text) strict',
        `insert into place values ('pla_000002', 2, 'x', 'gone', null)`,
      ],
    ],
  ])('that %s leaves nothing behind', async (_, statements) => {
    const driver = openDriver(':memory:')
    await migrate(driver, migrations)
    const [before, version] = [await tables(driver), driver.pragma('user_version')]
    await expect(migrate(driver, later(statements))).rejects.toThrow()
    expect(await tables(driver)).toEqual(before)
    expect(driver.pragma('user_version')).toBe(version)
    expect(driver.pragma('foreign_keys')).toBe(1)
    await driver.close()
  })
})
