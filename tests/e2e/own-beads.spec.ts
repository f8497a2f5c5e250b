import { mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { ask } from './ask.ts'
import { axeFaults, contrastFaults } from './axe-faults.ts'
import { openRoom, pick, press, take, write } from './journey/controls.ts'
import { openStudio } from './studio.ts'

// A bead that no table knows: measured, typed, used, kept while it is used, handed on as a file.

test('a bead form of her own is typed as she writes it and then serves everywhere', async () => {
  const { page, answerDialogs, close } = await openStudio({ sample: true })
  await openRoom(page, 'Settings')
  await page.getByRole('tab', { name: 'Beads and threads' }).click()
  await press(page, 'Add a bead form')
  await write(page, 'Name', 'Tide drop 3,5 mm')
  await write(page, 'Across its hole', '3,5')
  await write(page, 'Along its hole', '3,3 to 3,6')
  await write(page, 'The hole', '3,8')
  await write(page, 'Beads in a gram', '15 (14 to 16)')
  await write(page, 'Put aside as misshapen', '3 %')
  await press(page, 'Save')
  // Refused in its place, and nothing typed is lost.
  await expect(page.getByLabel('The hole', { exact: true })).toHaveAttribute('aria-invalid', 'true')
  await expect(page.getByText('A hole of 3,8 mm does not fit')).toBeVisible()
  expect(await axeFaults(page)).toEqual([])
  await write(page, 'The hole', '0,8 ± 0,05')
  await press(page, 'Save')
  const row = page.getByRole('row', { name: /Tide drop 3,5 mm/ })
  await expect(row).toContainText('3,45 to 3,55')
  await expect(row).toContainText('your own, measured')
  const { forms } = await ask(page, 'tables.own', {})
  expect(forms).toMatchObject([
    {
      id: 'tide-drop-3-5-mm',
      lengthMm: { low: 3.3, value: 3.45, high: 3.6, basis: 'measured' },
      cullRate: { low: 0.025, value: 0.03, high: 0.035 },
    },
  ])

  // Saved as it stands it is no step: there would be nothing to undo.
  const before = await ask(page, 'history.list', { limit: 1 })
  await row.getByRole('button').click()
  await press(page, 'Save')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  expect(await ask(page, 'history.list', { limit: 1 })).toEqual(before)

  await openRoom(page, 'Stock')
  await press(page, 'New material')
  await write(page, 'Name', 'Slate drops')
  await write(page, 'Code', 'SD1')
  await pick(page, 'Bead form', 'Tide drop')
  await press(page, 'Save')
  await page.getByRole('heading', { level: 1, name: 'Slate drops' }).waitFor()

  await openRoom(page, 'Settings')
  await page.getByRole('tab', { name: 'Beads and threads' }).click()
  await expect(row).toContainText('1 material')
  await row.getByRole('button').click()
  await press(page, 'Remove')
  await expect(
    page.getByText('Tide drop 3,5 mm is in use in the material Slate drops.'),
  ).toBeVisible()
  await page.keyboard.press('Escape')

  const folder = test.info().outputPath('files')
  mkdirSync(folder, { recursive: true })
  const file = join(folder, 'beads-and-threads.json')
  answerDialogs(file, file)
  await press(page, 'Save yours as a file')
  await expect(page.getByText(/^Saved beads-and-threads\.json/)).toBeVisible()
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual({ forms, threads: [] })
  await press(page, 'Bring in a table')
  await expect(page.getByText('Nothing to change: it stands so already.')).toBeVisible()

  await take(page, 'Threads')
  await press(page, 'Add a thread')
  await write(page, 'Name', 'Salt cord')
  await write(page, 'How thick it lies in a hole', '0,2–0,25')
  await press(page, 'Save')
  await expect(page.getByRole('row', { name: /Salt cord/ })).toContainText('0,225')
  expect(await contrastFaults(page)).toEqual([])
  await page.keyboard.press('Control+z')
  await expect(page.getByRole('row', { name: /Salt cord/ })).toHaveCount(0)
  await close()
})
