import { describe, expect, it } from 'vitest'
import { openDriver } from '../../electron/service/store/driver.ts'
import { migrate } from '../../electron/service/store/migrate.ts'
import { runAll } from '../../migrations/in-transaction.ts'
import { migrations } from '../../migrations/index.ts'

const design = [
  `insert into design values ('des_000001', 'Tidewrack', '[]', 0, null)`,
  `insert into design_version values ('ver_000001', 'des_000001', 1, '{}', '', 5, null)`,
]

describe('0020-drafts', () => {
  it('leaves the designs of a file from before as they are, and gives them a table to lie on', async () => {
    const driver = openDriver(':memory:')
    await migrate(driver, migrations, '0010-begin')
    await runAll(driver.db as never, design)
    const read = () => driver.db.selectFrom('design').selectAll().execute()
    const before = await read()
    await migrate(driver, migrations, '0020-drafts')
    expect(await read()).toEqual(before)
    expect(driver.pragma('user_version')).toBe(20)
    await runAll(driver.db as never, [
      `insert into draft values ('des_000001', '{}', 1, 1, 'ver_000001', 0)`,
      `insert into draft_stroke values ('des_000001', 1, 'Paint', '[]', '[]')`,
    ])
    expect(await driver.db.selectFrom('draft_stroke').selectAll().execute()).toHaveLength(1)
    await driver.close()
  })

  it('lets no position pass the strokes there are', async () => {
    const driver = openDriver(':memory:')
    await migrate(driver, migrations, '0020-drafts')
    await runAll(driver.db as never, design)
    const past = [`insert into draft values ('des_000001', '{}', 2, 1, 'ver_000001', 0)`]
    await expect(runAll(driver.db as never, past)).rejects.toThrow('CHECK')
    await driver.close()
  })
})
