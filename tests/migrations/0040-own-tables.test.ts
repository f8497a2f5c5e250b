import { describe, expect, it } from 'vitest'
import { openDriver } from '../../electron/service/store/driver.ts'
import { migrate } from '../../electron/service/store/migrate.ts'
import { runAll } from '../../migrations/in-transaction.ts'
import { migrations } from '../../migrations/index.ts'

const before = [
  `insert into material values ('mat_000001', 'WS', 'wet slate', 'bead', 'mg', 'cylinder-11/0',
    '#4b5a63', 'matte', 1, null, null, 'A1', '', '', null)`,
]
const mm = (low: number, value: number, high: number) => `${low}, ${value}, ${high}, 'measured'`
const form = (id: string, diameter: string, hole: string, cull = mm(0, 0.02, 0.05)) =>
  `insert into own_form values ('${id}', 'tide-drop', 'Tide drop', 'drop', '3.5 mm', ${diameter},
    ${mm(3.3, 3.4, 3.6)}, ${hole}, ${mm(14, 15, 16)}, ${cull}, null)`
const good = form('form_000001', mm(3.4, 3.5, 3.6), mm(0.7, 0.8, 0.9))

async function opened(statements: readonly string[]) {
  const driver = openDriver(':memory:')
  await migrate(driver, migrations, '0040-own-tables')
  await runAll(driver.db as never, statements)
  return driver
}

describe('0040-own-tables', () => {
  it('leaves a file from before as it is, with no forms or threads of its own', async () => {
    const driver = openDriver(':memory:')
    await migrate(driver, migrations, '0030-bench-work')
    await runAll(driver.db as never, before)
    const materials = await driver.db.selectFrom('material').selectAll().execute()
    await migrate(driver, migrations, '0040-own-tables')
    expect(await driver.db.selectFrom('material').selectAll().execute()).toEqual(materials)
    expect(await driver.db.selectFrom('own_form').selectAll().execute()).toEqual([])
    expect(await driver.db.selectFrom('own_thread').selectAll().execute()).toEqual([])
    expect(driver.pragma('user_version')).toBe(40)
    await driver.close()
  })

  it.each([
    ['a figure outside its range', form('f', mm(3.6, 3.5, 3.7), mm(0.7, 0.8, 0.9))],
    ['a hole as wide as the bead', form('f', mm(3.4, 3.5, 3.6), mm(3.4, 3.5, 3.6))],
    ['culls of every bead', form('f', mm(3.4, 3.5, 3.6), mm(0.7, 0.8, 0.9), mm(0, 0.5, 1))],
  ])('keeps no form with %s', async (_, statement) => {
    const driver = await opened([])
    await expect(runAll(driver.db as never, [statement])).rejects.toThrow('CHECK')
    await driver.close()
  })

  it('keeps one form of an id at a time, and any number that were removed', async () => {
    const driver = await opened([good])
    await expect(
      runAll(driver.db as never, [good.replace('form_000001', 'form_000002')]),
    ).rejects.toThrow('UNIQUE')
    await runAll(driver.db as never, [
      `insert into action values ('act_000001', 1, 5, 'tables.removeForm', 'Removed', 0, 'done')`,
      `update own_form set removed_by = 'act_000001'`,
      good.replace('form_000001', 'form_000002'),
    ])
    await driver.close()
  })
})
