import { expect, type Page, test } from '@playwright/test'

import { ask } from './ask.ts'
import { pick, take } from './journey/controls.ts'
import { openStudio } from './studio.ts'

const nameField = (page: Page) => page.getByLabel('Your workshop’s name')
const emptyButton = (page: Page) => page.getByRole('button', { name: 'Begin with empty drawers' })
const rail = (page: Page) => page.getByRole('navigation', { name: 'Rooms' })

test('a first start asks whose workshop it is, and begins empty only once it has a name', async () => {
  const { page, close } = await openStudio()
  await expect(page.getByRole('heading', { level: 1, name: 'Tallystrand' })).toBeVisible()
  for (const nameless of ['', '   ']) {
    await nameField(page).fill(nameless)
    await emptyButton(page).click()
    await expect(page.getByText('There is no name yet.')).toBeVisible()
  }
  expect((await ask(page, 'workshop.read', {})).workshop).toBeNull()
  await nameField(page).fill('Estuary Beads')
  await pick(page, 'Currency', 'SEK')
  await take(page, '12,5 g')
  await emptyButton(page).click()
  await expect(rail(page)).toContainText('Estuary Beads')
  const { workshop } = await ask(page, 'workshop.read', {})
  expect(workshop).toMatchObject({ name: 'Estuary Beads', currency: 'SEK', decimalMark: ',' })
  expect((await ask(page, 'materials.list', {})).materials).toEqual([])
  await expect(page.getByRole('link', { name: 'Bring in your stock' })).toBeVisible()
  await close()
})

test('the sample begins without a name and is there after a new start', async () => {
  const userDataDir = test.info().outputPath('user')
  const first = await openStudio({ userDataDir })
  await first.page.getByRole('button', { name: /Saltmarsh sample/ }).click()
  await expect(rail(first.page)).toContainText('Saltmarsh Beadworks')
  const before = await ask(first.page, 'designs.list', {})
  expect(before.designs).toHaveLength(8)
  await first.close()
  const second = await openStudio({ userDataDir })
  await expect(rail(second.page)).toContainText('Saltmarsh Beadworks')
  expect(await ask(second.page, 'designs.list', {})).toEqual(before)
  await second.close()
})

/** How the window, its picture and the canvas fit: the window’s size, then what is right or wrong. */
function firstPicture(page: Page): Promise<string> {
  return page.evaluate(() => {
    const place = document.querySelector('.first-picture')
    const [canvas, ...more] = place?.querySelectorAll('canvas') ?? []
    if (place === null || canvas === undefined || more.length > 0) return 'none, or several'
    const ratio = devicePixelRatio || 1
    const wanted = [place.clientWidth, place.clientHeight].map((side) => Math.round(side * ratio))
    // The last beads to be painted are those of the diamond at its middle.
    const middle = canvas.getContext('2d')?.getImageData(canvas.width / 2, canvas.height / 2, 1, 1)
      .data[3]
    const isSized = canvas.width === wanted[0] && canvas.height === wanted[1]
    const told = isSized && middle === 255 ? 'fits' : `${canvas.width}x${canvas.height}, ${middle}`
    return `${innerWidth}x${innerHeight}: ${told}`
  })
}

test('the first picture is shown whole, and is painted anew for another size of its place', async () => {
  const { app, page, close } = await openStudio()
  const size = (widthPx: number, heightPx: number) =>
    app.evaluate(
      ({ BrowserWindow }, wanted) => BrowserWindow.getAllWindows()[0]?.setContentSize(...wanted),
      [widthPx, heightPx] as [number, number],
    )
  await expect.poll(() => firstPicture(page)).toMatch(/: fits$/)
  await page.reload()
  // In the middle of the first painting.
  await size(1_500, 900)
  await size(1_100, 760)
  await expect.poll(() => firstPicture(page)).toBe('1100x760: fits')
  await size(1_280, 800)
  await expect.poll(() => firstPicture(page)).toBe('1280x800: fits')
  await close()
})
