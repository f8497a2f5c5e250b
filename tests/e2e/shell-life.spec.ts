import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

import { expect, test } from '@playwright/test'

import { electronEnv } from '../../scripts/runtime.ts'
import type { Bridge, ServiceState } from '../../shared-core/contract/bridge.ts'
import { openStudio, type Studio, whatToStart } from './studio.ts'

type Page = Window & Readonly<{ tallystrand: Bridge }>

function scratchFolder(): string {
  const folder = test.info().outputPath('scratch')
  mkdirSync(folder, { recursive: true })
  return folder
}

test('a second start ends at once and brings the first window forward', async () => {
  const studio = await openStudio()
  await studio.app.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.hide())
  const { executablePath, args } = whatToStart([`--user-data-dir=${studio.userDataDir}`])
  const second = spawn(executablePath, args, { env: electronEnv(process.env['DISPLAY']) })
  const code = await new Promise((resolve) => second.once('exit', resolve))
  expect(code).toBe(0)
  await expect
    .poll(() =>
      studio.app.evaluate(({ BrowserWindow }) => {
        const windows = BrowserWindow.getAllWindows()
        return { count: windows.length, visible: windows[0]?.isVisible() }
      }),
    )
    .toEqual({ count: 1, visible: true })
  await studio.close()
})

test('two starts with different folders are two studios', async () => {
  const [one, two] = await Promise.all([openStudio(), openStudio()])
  expect(await two.page.title()).toBe(await one.page.title())
  await Promise.all([one.close(), two.close()])
})

test('the window opens where it stood when it was closed', async () => {
  const userDataDir = scratchFolder()
  const first = await openStudio({ userDataDir })
  const bounds = { x: 60, y: 40, width: 1010, height: 700 }
  await first.app.evaluate(({ BrowserWindow }, wanted) => {
    BrowserWindow.getAllWindows()[0]?.setBounds(wanted)
  }, bounds)
  // The display answers in its own time.
  await expect.poll(() => boundsOf(first)).toEqual(bounds)
  await first.close()
  const second = await openStudio({ userDataDir })
  await expect.poll(() => boundsOf(second)).toEqual(bounds)
  await second.close()
})

function boundsOf({ app }: Studio) {
  return app.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.getNormalBounds())
}

for (const [what, stored] of [
  ['a place on no screen', { x: 9_000, y: 9_000, width: 1_000, height: 700 }],
  ['something else', 'nonsense'],
] as const) {
  test(`a remembered window with ${what} opens at the usual size`, async () => {
    const userDataDir = scratchFolder()
    writeFileSync(
      join(userDataDir, 'window.json'),
      JSON.stringify({ bounds: stored, maximised: false, theme: 'dark' }),
    )
    const studio = await openStudio({ userDataDir })
    expect(await boundsOf(studio)).toMatchObject({ width: 1280, height: 820 })
    await studio.close()
  })
}

test('the window outlives the service, which starts again when the maker says so', async () => {
  const studio = await openStudio()
  await studio.page.evaluate(() => {
    const states: ServiceState[] = []
    Object.assign(window, { states })
    ;(window as unknown as Page).tallystrand.onService((state) => states.push(state))
  })
  const before = await studio.page.evaluate(() =>
    (window as unknown as Page).tallystrand.request('workshop.read', {}),
  )
  expect(before.ok).toBe(true)
  const startAgain = 0
  studio.answerDialogs(startAgain)
  await studio.app.evaluate(({ app }) => {
    const service = app.getAppMetrics().find(({ name }) => name === 'Tallystrand data')
    if (service !== undefined) process.kill(service.pid, 'SIGKILL')
  })
  await expect
    .poll(() => studio.page.evaluate(() => (window as unknown as { states: unknown }).states))
    .toEqual(['stopped', 'running'])
  const after = await studio.page.evaluate(() =>
    (window as unknown as Page).tallystrand.request('workshop.read', {}),
  )
  expect(after).toEqual(before)
  await studio.close()
})

test('a file is picked through the shell and its bytes arrive whole', async () => {
  const studio = await openStudio()
  const file = join(scratchFolder(), 'chart.csv')
  writeFileSync(file, 'A,B\nB,A\n')
  studio.answerDialogs(file, null)
  const pick = () =>
    studio.page.evaluate(() =>
      (window as unknown as Page).tallystrand.shell('file.pick', {
        title: 'Choose a chart',
        filters: [{ name: 'Chart', extensions: ['csv'] }],
      }),
    )
  expect(await pick()).toEqual({
    ok: true,
    value: {
      kind: 'picked',
      file: { fileName: 'chart.csv', base64: Buffer.from('A,B\nB,A\n').toString('base64') },
    },
  })
  expect(await pick()).toEqual({ ok: true, value: { kind: 'cancelled' } })
  await studio.close()
})

test('a made file is saved whole, and a place that cannot be written is refused', async () => {
  const studio = await openStudio()
  const folder = scratchFolder()
  const file = { fileName: 'tags.pdf', base64: Buffer.from('%PDF-1.7 tags').toString('base64') }
  const save = () =>
    studio.page.evaluate(
      (made) =>
        (window as unknown as Page).tallystrand.shell('file.save', { title: 'Save', file: made }),
      file,
    )
  studio.answerDialogs(join(folder, 'tags.pdf'), join(folder, 'nowhere', 'tags.pdf'), null)
  expect(await save()).toEqual({
    ok: true,
    value: { kind: 'saved', savedId: 'saved_1', fileName: 'tags.pdf', folder },
  })
  expect(readFileSync(join(folder, 'tags.pdf'), 'utf8')).toBe('%PDF-1.7 tags')
  expect(await save()).toMatchObject({ ok: false, error: { code: 'file-enoent' } })
  expect(existsSync(join(folder, 'nowhere'))).toBe(false)
  expect(await save()).toEqual({ ok: true, value: { kind: 'cancelled' } })
  await studio.close()
})

test('only a file saved since the start can be shown or opened', async () => {
  const studio = await openStudio()
  const answers = await studio.page.evaluate(() => {
    const { tallystrand } = window as unknown as Page
    return Promise.all([
      tallystrand.shell('file.show', { savedId: 'saved_7' }),
      tallystrand.shell('file.open', { savedId: 'saved_7' }),
    ])
  })
  for (const answer of answers) {
    expect(answer).toMatchObject({ ok: false, error: { code: 'file-not-saved-here' } })
  }
  await studio.close()
})

test('the menu sends its commands to the page', async () => {
  const studio = await openStudio()
  await studio.page.evaluate(() => {
    const heard: unknown[] = []
    Object.assign(window, { heard })
    ;(window as unknown as Page).tallystrand.onCommand((command) => heard.push(command))
  })
  await expect
    .poll(() => studio.app.evaluate(({ Menu }) => Menu.getApplicationMenu() !== null))
    .toBe(true)
  await studio.app.evaluate(({ Menu }) => {
    const menus = Menu.getApplicationMenu()?.items ?? []
    const press = (label: string) =>
      menus
        .flatMap(({ submenu }) => submenu?.items ?? [])
        .find((item) => item.label === label)
        ?.click()
    for (const label of ['Undo', 'Redo', 'Find a command', 'Stock']) press(label)
  })
  await expect
    .poll(() => studio.page.evaluate(() => (window as unknown as { heard: unknown }).heard))
    .toEqual([
      { kind: 'undo' },
      { kind: 'redo' },
      { kind: 'find' },
      { kind: 'open-room', room: 'stock' },
    ])
  await studio.close()
})

test('the studio says which version runs and where its data is', async () => {
  const studio = await openStudio()
  const answer = await studio.page.evaluate(() =>
    (window as unknown as Page).tallystrand.shell('studio.describe', {}),
  )
  expect(answer).toMatchObject({
    ok: true,
    value: {
      version: expect.stringMatching(/^\d+\.\d+\.\d+$/),
      dataFile: join(studio.userDataDir, 'workshop.tallystrand'),
    },
  })
  await studio.close()
})
