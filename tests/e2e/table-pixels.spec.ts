import { expect, type Page, test } from '@playwright/test'
import { beadReach } from '../../renderer/drawing/bead-scene.ts'
import { fitView, panBy, type View } from '../../renderer/drawing/view.ts'
import { wheel } from '../../renderer/drawing/view-control.ts'
import type { StitchKind } from '../../shared-core/chart/chart.ts'
import type { DesignBody } from '../../shared-core/design/design.ts'
import { ask } from './ask.ts'
import { goTo } from './go-to.ts'
import { beginEmpty } from './journey/begin.ts'
import { seededBody } from './seeded-body.ts'
import { canvasSize, coloursAt, sceneOf, seenPlaces, slotSeen } from './seen-beads.ts'
import { openStudio, type Studio } from './studio.ts'

let studio: Studio
test.beforeAll(async () => {
  studio = await openStudio()
  await beginEmpty(studio.page)
})
test.afterAll(() => studio.close())

/** Lays a drawing from a seed on the table; its view is the one that shows all of it. */
async function lay(
  page: Page,
  stitch: StitchKind,
  size: Readonly<{ across: number; down: number }>,
) {
  const body = seededBody(stitch, size, 20_261)
  const { id } = await ask(page, 'designs.save', {
    name: `${stitch} of ${size.across}`,
    tags: [],
    note: '',
    body,
  })
  await goTo(page, `#/designs/${id}/draw`)
  await page.getByRole('heading', { name: `${stitch} of ${size.across}` }).waitFor()
  await page.locator('.bead-picture-frame').focus()
  return id
}

const bodyOf = async (page: Page, designId: string) =>
  (await ask(page, 'drafts.open', { designId })).body as DesignBody

type Size = Readonly<{ width: number; height: number }>

/** How many of the places in sight show another bead than the drawing has. */
async function wrongPlaces(page: Page, body: DesignBody, viewOf: (size: Size) => View) {
  const scene = sceneOf(body)
  const size = await canvasSize(page)
  const view = viewOf(size)
  const places = seenPlaces(scene, view, size)
  const reach = Math.floor((beadReach(scene).xMm * view.scale) / 3)
  const colours = await coloursAt(page, 'beads', places, Math.max(0, Math.min(2, reach)))
  const wrong = places.filter(
    ({ slot }, at) => slotSeen(body.palette, colours[at] ?? [0, 0, 0, 0]) !== slot,
  )
  return `${wrong.length} of ${places.length > 60 ? 'many' : places.length}`
}

async function expectSeen(page: Page, body: DesignBody, viewOf: (size: Size) => View) {
  await expect.poll(() => wrongPlaces(page, body, viewOf)).toBe('0 of many')
}

async function fineness(page: Page, ratio: number): Promise<void> {
  const session = await page.context().newCDPSession(page)
  const override = { width: 1280, height: 800, deviceScaleFactor: ratio, mobile: false }
  await session.send('Emulation.setDeviceMetricsOverride', override)
}

const drawn = [
  { ratio: 1, stitches: ['brick', 'peyote', 'herringbone', 'right-angle-weave'] },
  { ratio: 2, stitches: ['loom'] },
] as const

for (const { ratio, stitches } of drawn) {
  test(`every bead and every hole of each stitch is seen where it lies, ${ratio} pixels to one`, async () => {
    const { page } = studio
    await fineness(page, ratio)
    for (const stitch of stitches) {
      const id = await lay(page, stitch, { across: 17, down: 14 })
      const body = await bodyOf(page, id)
      await expectSeen(page, body, (size) => fitView(sceneOf(body), size))
    }
  })
}

test('what is painted, moved, brought nearer and undone is what is seen', async () => {
  const { page } = studio
  await fineness(page, 1)
  const id = await lay(page, 'brick', { across: 17, down: 14 })
  const first = await bodyOf(page, id)
  const size = await canvasSize(page)
  const scene = sceneOf(first)
  let view = fitView(scene, size)
  await expectSeen(page, first, () => view)

  const box = await page.locator('.bead-picture-frame').boundingBox()
  if (box === null) throw new Error('expected the picture on the page')
  const at = (x: number, y: number) => [box.x + x * box.width, box.y + y * box.height] as const
  await page.keyboard.press('2')
  await page.mouse.move(...at(0.3, 0.35))
  await page.mouse.down()
  await page.mouse.move(...at(0.7, 0.6), { steps: 6 })
  await page.mouse.up()
  await expect.poll(async () => (await ask(page, 'drafts.open', { designId: id })).position).toBe(1)
  const painted = await bodyOf(page, id)
  expect(painted).not.toEqual(first)
  await expectSeen(page, painted, () => view)

  await page.mouse.move(...at(0.5, 0.5))
  await page.mouse.down({ button: 'middle' })
  await page.mouse.move(box.x + box.width / 2 + 37, box.y + box.height / 2 - 23)
  await page.mouse.up({ button: 'middle' })
  view = panBy(view, 37, -23, scene, size)
  await expectSeen(page, painted, () => view)

  const turn = { deltaX: 0, deltaY: -240, ctrlKey: false, shiftKey: false }
  const point = { x: box.width / 2 + 37, y: box.height / 2 - 23 }
  await page.mouse.wheel(0, -240)
  const reach = beadReach(scene)
  const picture = {
    work: scene,
    beadMm: 2 * Math.min(reach.xMm, reach.yMm),
    canvas: size,
    ratio: 1,
  }
  view = wheel(picture, view, turn, point)
  await expectSeen(page, painted, () => view)

  await page.keyboard.press('Control+z')
  await expectSeen(page, first, () => view)
})

test('crosshair and selection lie over their beads, and nowhere once they are left', async () => {
  const { page } = studio
  await fineness(page, 1)
  const id = await lay(page, 'square', { across: 9, down: 8 })
  const scene = sceneOf(await bodyOf(page, id))
  const view = fitView(scene, await canvasSize(page))
  const places = seenPlaces(scene, view, await canvasSize(page)).filter(
    ({ slot }) => slot !== undefined,
  )
  const [first, second] = places
  if (first === undefined || second === undefined) throw new Error('expected beads in sight')
  const half = ((second.x - first.x) / 2) | 0
  const ring = (place: typeof first) => [{ x: place.x - half, y: place.y }]
  const covered = async (points: readonly Readonly<{ x: number; y: number }>[], reach: number) =>
    (await coloursAt(page, 'over', points, reach))[0]?.[3] ?? 0
  await page.keyboard.press('Control+Home')
  await page.keyboard.press('Home')
  await expect.poll(() => covered(ring(first), 2)).toBeGreaterThan(100)
  expect(await covered([first], 1)).toBe(0)
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowDown')
  await expect.poll(() => covered(ring(first), 2)).toBe(0)
  await page.keyboard.press('Control+a')
  const last = places.at(-1) ?? first
  await expect.poll(() => covered([last], 1)).toBeGreaterThan(30)
  await page.keyboard.press('Escape')
  await expect.poll(() => covered([last], 1)).toBe(0)
})

test('no line is seen where painted parts of a large drawing meet', async () => {
  const { page } = studio
  await fineness(page, 1)
  await lay(page, 'brick', { across: 60, down: 480 })
  // Farther than any bead is painted, then nearer by steps that fall on fractions of pixels.
  for (let step = 0; step < 5; step += 1) {
    await expect.poll(() => bareAmidBeads(page, step)).toBe(0)
    await page.keyboard.press(step === 0 ? '0' : '+')
  }
})

/** Pixels amid the drawing through which the ground shows. */
function bareAmidBeads(page: Page, step: number): Promise<number> {
  return page.evaluate(
    (half) => {
      const canvas = document.querySelector<HTMLCanvasElement>('.bead-picture-frame > canvas')
      const brush = canvas?.getContext('2d')
      if (!canvas || !brush) throw new Error('expected a canvas')
      const [width, height] = [Math.floor(canvas.width * half), Math.floor(canvas.height * 0.5)]
      const left = Math.floor((canvas.width - width) / 2)
      const { data } = brush.getImageData(left, Math.floor(canvas.height / 4), width, height)
      let bare = 0
      for (let alpha = 3; alpha < data.length; alpha += 4) if ((data[alpha] ?? 0) < 250) bare += 1
      return bare
    },
    step === 0 ? 0.07 : 0.08,
  )
}
