import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, type Page, test } from '@playwright/test'

import { ask } from './ask.ts'
import { axeFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { openRoom, press, write } from './journey/controls.ts'
import { openStudio } from './studio.ts'

test.setTimeout(240_000)

const goOn = (page: Page) => page.getByRole('button', { name: /^Next/ })

async function underWay(page: Page, customer: string) {
  const { works } = await ask(page, 'bench.list', { state: 'under-way' })
  const work = works.find(({ order }) => order?.customer === customer)
  if (work === undefined) throw new Error(`expected work for ${customer}`)
  return work
}

async function onHand(page: Page, code: string) {
  const { materials } = await ask(page, 'materials.list', {})
  const material = materials.find((one) => one.code === code)
  if (material === undefined) throw new Error(`expected ${code} in stock`)
  return material.onHand
}

test('a piece is begun for an order, worked row by row, kept through a crash, finished as weighed, and undone', async () => {
  const userDataDir = mkdtempSync(join(tmpdir(), 'tallystrand-bench-'))
  let studio = await openStudio({ userDataDir, sample: true })
  let { page } = studio

  await openRoom(page, 'Bench')
  const row = page
    .getByRole('row')
    .filter({ hasText: 'Gull Lane Gallery' })
    .filter({ hasText: 'Marsh harrier' })
  await expect(row.getByText('Covered')).toBeVisible()
  await row.getByRole('button', { name: 'Start' }).click()
  const sheet = page.getByRole('dialog', { name: 'Start a piece' })
  await sheet.getByRole('heading', { name: 'From the drawers' }).waitFor()
  expect(await axeFaults(page)).toEqual([])
  await sheet.getByText('Weigh the tubes first').click()
  await sheet.getByLabel('tar', { exact: false }).last().fill('12,5')
  const boxes = sheet.getByRole('checkbox')
  const things = await boxes.count()
  expect(things).toBeGreaterThan(5)
  for (let at = 0; at < things; at += 1) await boxes.nth(at).check()
  await expect(sheet.getByText('All of it is on the table.')).toBeVisible()
  await sheet.getByRole('button', { name: 'Begin 2 pendants' }).click()

  const onward = page.getByRole('link', { name: 'Begin row by row' })
  await onward.waitFor()
  await expect(page.getByText('All of it is on the table.')).toBeVisible()
  await onward.click()
  await goOn(page).click()
  await goOn(page).click()
  await goOn(page).click()
  await expect
    .poll(async () => (await underWay(page, 'Gull Lane Gallery')).place.step)
    .toBeGreaterThan(0)
  const left = await underWay(page, 'Gull Lane Gallery')
  // As a crash or a power cut ends it: nothing is told, nothing is tidied up.
  const gone = once(studio.app.process(), 'exit')
  studio.app.process().kill('SIGKILL')
  await gone

  studio = await openStudio({ userDataDir })
  page = studio.page
  const found = await underWay(page, 'Gull Lane Gallery')
  expect(found.place).toEqual(left.place)
  expect(found.workedS).toBeGreaterThanOrEqual(left.workedS)
  await openRoom(page, 'Today')
  const bench = page.getByRole('region', { name: 'On the bench' })
  await bench.getByRole('link', { name: /Marsh harrier pendant.*Row \d+ of 28/s }).click()
  await goOn(page).click()
  await expect
    .poll(async () => (await underWay(page, 'Gull Lane Gallery')).place.step)
    .toBeGreaterThan(left.place.step)
  await page.keyboard.press('Escape')
  await page.getByRole('heading', { level: 1, name: 'Marsh harrier pendant' }).waitFor()
  expect((await underWay(page, 'Gull Lane Gallery')).state).toBe('resting')
  expect(await axeFaults(page)).toEqual([])

  await page.getByRole('link', { name: 'Finish' }).click()
  await page.getByRole('heading', { level: 1, name: 'Finish Marsh harrier pendant' }).waitFor()
  const before = { tar: await onHand(page, 'TR-11'), fog: await onHand(page, 'FG-11') }
  await write(page, 'Pieces made', '1')
  await page.getByLabel(/^Bench time in all/).fill('1 h 15 min')
  await page.getByLabel(/^Thread left over/).fill('35 cm')
  await write(page, 'A, tar', '2')
  const tar = page
    .getByRole('listitem')
    .filter({ hasText: 'tar' })
    .filter({ hasText: 'After' })
    .first()
  await expect(tar.getByLabel('Before')).toHaveValue('12,5')
  await tar.getByLabel('After').fill('13')
  await expect(tar.getByText('weighs more after the work than before')).toBeVisible()
  await press(page, 'Finish 1 pendant')
  await expect(tar.getByLabel('After')).toBeFocused()
  await tar.getByLabel('After').fill('12')
  const booking = page.getByRole('region', { name: 'What will be booked' })
  await expect(booking).toContainText('1 pendant will stand in The drawer, kept for OR-0003.')
  await expect(booking).toContainText('0,50 g of tar')
  expect(await axeFaults(page)).toEqual([])
  await press(page, 'Finish 1 pendant')
  await page.getByRole('heading', { level: 1, name: 'Shelf' }).waitFor()

  expect(await onHand(page, 'TR-11')).toBe(before.tar - 500)
  expect(await onHand(page, 'FG-11')).toBeLessThan(before.fog)
  const { pieces } = await ask(page, 'pieces.list', { state: 'here' })
  const made = pieces.filter(({ orderCode }) => orderCode === 'OR-0003')
  expect(made).toHaveLength(1)
  await openRoom(page, 'Bench')
  const finished = page.getByRole('table', { name: /^Finished/ })
  await expect(finished).toContainText('Marsh harrier pendant')
  await expect(finished).toContainText('1 h 15 min')
  expect(await axeFaults(page)).toEqual([])
  await page.getByRole('link', { name: 'What the bench has taught' }).click()
  await page.getByRole('table', { name: 'Beads put aside' }).waitFor()
  await expect(page.getByRole('table', { name: 'Learnt from these makes' })).toContainText(
    'Marsh harrier pendant',
  )
  expect(await axeFaults(page)).toEqual([])

  await ask(page, 'history.undo', {})
  expect(await onHand(page, 'TR-11')).toBe(before.tar)
  expect((await underWay(page, 'Gull Lane Gallery')).units).toBe(2)
  await studio.close()
  rmSync(userDataDir, { recursive: true, force: true })
})

test('work that is given up books nothing and frees what it held', async () => {
  const studio = await openStudio({ sample: true })
  const { page } = studio
  await openRoom(page, 'Bench')
  await press(page, 'Start a piece')
  const sheet = page.getByRole('dialog', { name: 'Start a piece' })
  await expect(sheet.getByRole('combobox', { name: 'Design' })).toBeVisible()
  await page.keyboard.press('Escape')
  const { designs } = await ask(page, 'designs.list', {})
  const studs = designs.find(({ name }) => name === 'Samphire studs')
  await goTo(page, `#/designs/${studs?.id}`)
  await page.getByRole('link', { name: 'Start a piece' }).click()
  await expect(sheet.getByText('Samphire studs')).toBeVisible()
  await sheet.getByLabel('How many').fill('nine')
  await sheet.getByRole('button', { name: 'Begin', exact: true }).click()
  await expect(sheet.getByLabel('How many')).toBeFocused()
  await sheet.getByLabel('How many').fill('3')
  const free = await ask(page, 'materials.list', {})
  await sheet.getByRole('button', { name: /^Begin 3/ }).click()
  await page.getByText('For the shelf. The beads it takes are held').waitFor()
  expect(await ask(page, 'materials.list', {})).not.toEqual(free)
  await press(page, 'Give up')
  await page.getByLabel(/^Why/).fill('The hole is too small for the thread.')
  await press(page, 'Give it up')
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor()
  expect(await ask(page, 'materials.list', {})).toEqual(free)
  await studio.close()
})
