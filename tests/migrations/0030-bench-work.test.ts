import { describe, expect, it } from 'vitest'
import { openDriver } from '../../electron/service/store/driver.ts'
import { migrate } from '../../electron/service/store/migrate.ts'
import { runAll } from '../../migrations/in-transaction.ts'
import { migrations } from '../../migrations/index.ts'

const made = [
  `insert into design values ('des_000001', 'Tidewrack', '[]', 0, null)`,
  `insert into design_version values ('ver_000001', 'des_000001', 1, '{}', '', 5, null)`,
  `insert into colourway values ('cw_000001', 'des_000001', 1, 'Wet slate', null)`,
  `insert into make values ('make_000001', 'ver_000001', 'cw_000001', null, 2, '2026-11-20', 7200,
    '', 100, 200, 30, 330, null)`,
]
const work = (values: string) =>
  `insert into bench_work (id, version_id, colourway_id, units, begun_on, before_json, copy_at,
    part_at, step_at, units_done, worked_s, resting, kept_at_ms, note, state, make_id, log_json)
    values ('bw_000001', 'ver_000001', 'cw_000001', 2, '2026-11-25', '{}', 0, 0, 0, ${values})`

describe('0030-bench-work', () => {
  it('leaves the makes of a file from before as they are, and lets their time count', async () => {
    const driver = openDriver(':memory:')
    await migrate(driver, migrations, '0020-drafts')
    await runAll(driver.db as never, made)
    const before = await driver.db.selectFrom('make').selectAll().execute()
    await migrate(driver, migrations, '0030-bench-work')
    expect(await driver.db.selectFrom('make').selectAll().execute()).toEqual(
      before.map((row) => ({ ...row, left_out: 0 })),
    )
    expect(driver.pragma('user_version')).toBe(30)
    await driver.close()
  })

  it.each([
    ['more done than begun', `3, 0, 0, 5, '', 'open', null, null`],
    ['done without its make', `2, 0, 0, 5, '', 'done', null, null`],
    ['under way with a make', `2, 0, 0, 5, '', 'open', 'make_000001', '{}'`],
  ])('keeps no work %s', async (_, values) => {
    const driver = openDriver(':memory:')
    await migrate(driver, migrations, '0030-bench-work')
    await runAll(
      driver.db as never,
      made.map((text) => text.replace('330, null)', '330, null, 0)')),
    )
    await expect(runAll(driver.db as never, [work(values)])).rejects.toThrow('CHECK')
    await runAll(driver.db as never, [work(`2, 0, 0, 5, '', 'open', null, null`)])
    await driver.close()
  })
})
