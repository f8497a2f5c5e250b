import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { paintCells } from '../../../../shared-core/chart/edits/paint-cells.ts'
import { sharedChart } from '../../../../shared-core/chart/shared-rows.ts'
import type { CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { applyEdits } from '../../../../shared-core/design/edits/body-edit.ts'
import { chartStroke } from '../../../../shared-core/design/edits/chart-stroke.ts'
import { openStudio } from '../open-studio.ts'
import { openSmallWorkshop, type SmallWorkshop, smallBody } from '../small-workshop.ts'

let shop: SmallWorkshop
let folder: string
let file: string

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tallystrand-drafts-'))
  file = join(folder, 'workshop.tally')
  shop = await openSmallWorkshop(file)
})
afterEach(async () => {
  await shop.studio.close()
  rmSync(folder, { recursive: true, force: true })
})

type Strokes = CallInput<'drafts.stroke'>['strokes']
type Body = CallOutput<'drafts.open'>['body']

/** Bodies and strokes of a bead painted further and further right in the last row. */
function painting(body: DesignBody, count: number) {
  const bodies = [body]
  const strokes: Strokes = []
  for (let at = 0; at < count; at += 1) {
    const before = bodies.at(-1) as DesignBody
    const panel = before.parts[0]
    if (panel?.kind !== 'panel') throw new Error('expected a panel')
    const chart = sharedChart(panel.chart)
    const edit = paintCells(chart, [{ row: 3, at: 5 + 2 * at }], at % 2)
    const stroke = chartStroke(`Paint ${at}`, before, { partId: 'panel', before: chart, edit })
    const after = applyEdits(before, stroke.redo)
    if (!after.ok) throw new Error(after.error.message)
    bodies.push(after.value)
    strokes.push(JSON.parse(JSON.stringify(stroke)))
  }
  return { bodies, strokes }
}

const open = () => shop.studio.ask('drafts.open', { designId: shop.designId })
const add = (position: number, strokes: Strokes) =>
  shop.studio.ask('drafts.stroke', { designId: shop.designId, position, strokes })
const moveTo = (position: number) =>
  shop.studio.ask('drafts.moveTo', { designId: shop.designId, position })
const save = (body: Body) =>
  shop.studio.ask('designs.save', { id: shop.designId, name: 'Small', tags: [], body, note: '' })

describe('a drawing on the table', () => {
  it('begins as the latest version, with nothing to undo', async () => {
    const { version, body } = await shop.studio.ask('designs.read', { id: shop.designId })
    expect(await open()).toMatchObject({
      version,
      body,
      position: 0,
      count: 0,
      strokes: [],
      savedPosition: 0,
      isBehind: false,
    })
  })

  it('is there stroke by stroke after the file was closed, and goes back and forth', async () => {
    const { body } = await open()
    const { bodies, strokes } = painting(body, 3)
    await add(0, strokes.slice(0, 2))
    await add(2, strokes.slice(2))
    await shop.studio.close()
    const studio = await openStudio(file)
    shop = { ...shop, studio }
    expect(await open()).toMatchObject({ body: bodies[3], position: 3, count: 3, savedPosition: 0 })
    for (const position of [1, 0, 3, 2]) {
      await moveTo(position)
      expect(await open()).toMatchObject({ body: bodies[position], position, count: 3 })
    }
    const read = (await open()).strokes.map(({ seq: _, ...stroke }) => stroke)
    expect(read).toEqual(strokes)
  })

  it('forgets what was undone once something else is drawn', async () => {
    const { body } = await open()
    const { strokes } = painting(body, 3)
    await add(0, strokes)
    await moveTo(1)
    const other = painting((await open()).body, 1)
    await add(1, other.strokes)
    expect(await open()).toMatchObject({ body: other.bodies[1], position: 2, count: 2 })
    const seqs = await shop.studio.ask('drafts.strokes', {
      designId: shop.designId,
      from: 1,
      to: 9,
    })
    expect(seqs.strokes.map(({ seq, label }) => [seq, label])).toEqual([
      [1, 'Paint 0'],
      [2, 'Paint 0'],
    ])
  })

  it('stays after it was saved, so that what was drawn before can be undone', async () => {
    const { bodies, strokes } = painting((await open()).body, 2)
    await add(0, strokes)
    expect(await state()).toEqual({ hasUnsaved: true, strokes: 2 })
    await save(bodies[2] as Body)
    expect(await state()).toEqual({ hasUnsaved: false, strokes: 2 })
    expect(await open()).toMatchObject({ version: 2, savedPosition: 2, isBehind: false })
    await moveTo(0)
    expect(await open()).toMatchObject({ body: bodies[0], savedPosition: 2 })
    await add(0, painting(bodies[0] as Body, 1).strokes)
    expect(await open()).toMatchObject({ savedPosition: null })
  })

  it('takes a version saved elsewhere as a stroke when nothing was unsaved', async () => {
    const { body } = await open()
    const renamed = { ...body, unitName: 'pair of studs' }
    await save(renamed)
    const opened = await open()
    expect(opened).toMatchObject({ body: renamed, position: 1, savedPosition: 1, isBehind: false })
    expect(opened.strokes[0]?.label).toBe('Version 2')
    await moveTo(0)
    expect((await open()).body).toEqual(body)
  })

  it('keeps what is unsaved, and says that a version has been saved elsewhere', async () => {
    const { body } = await open()
    const { bodies, strokes } = painting(body, 1)
    await add(0, strokes)
    await save({ ...body, unitName: 'pair of studs' })
    expect(await open()).toMatchObject({ body: bodies[1], isBehind: true, savedPosition: null })
  })

  it('stands when the saving of it is undone, and can be saved once more', async () => {
    const { bodies, strokes } = painting((await open()).body, 1)
    await add(0, strokes)
    await save(bodies[1] as Body)
    await shop.studio.ask('history.undo', {})
    expect(await open()).toMatchObject({ body: bodies[1], isBehind: false, savedPosition: null })
    expect((await save(bodies[1] as Body)).version).toBe(2)
  })

  it('is cleared, and the versions stay', async () => {
    const { strokes } = painting((await open()).body, 2)
    await add(0, strokes)
    await shop.studio.ask('drafts.forget', { designId: shop.designId })
    expect(await state()).toEqual({ hasUnsaved: false, strokes: 0 })
    expect(await open()).toMatchObject({ body: smallBody, position: 0, count: 0 })
  })
})

describe('a stroke is refused and nothing is written', () => {
  const refusals = async (
    call: 'drafts.stroke' | 'drafts.moveTo',
    input: object,
    code: string,
  ): Promise<void> => {
    const before = await open()
    const full = { designId: shop.designId, ...input }
    expect(await shop.studio.refused(call, full)).toMatchObject({ code })
    expect(await open()).toEqual(before)
  }

  it('where the drawing does not stand, or past its strokes', async () => {
    const { strokes } = painting((await open()).body, 1)
    await refusals('drafts.stroke', { position: 1, strokes }, 'draft-moved')
    await refusals('drafts.moveTo', { position: 1 }, 'stroke-not-there')
  })

  it('where it belongs to another drawing, the good ones beside it too', async () => {
    const { strokes } = painting((await open()).body, 1)
    const edit = {
      kind: 'chart',
      partId: 'panel',
      patch: {
        stitch: 'brick',
        splices: [{ row: 70, remove: 1, insert: [] }],
        shift: { row: 0, at: 0 },
      },
    }
    const wrong = { label: 'Paint', redo: [edit], undo: [edit] }
    await refusals('drafts.stroke', { position: 0, strokes: [...strokes, wrong] }, 'stroke-misfit')
  })

  it('where there is no drawing or no design', async () => {
    const { studio, designId } = shop
    expect(await studio.refused('drafts.moveTo', { designId, position: 0 })).toMatchObject({
      code: 'no-draft',
      field: 'designId',
    })
    expect(await studio.refused('drafts.open', { designId: 'des_nothere' })).toMatchObject({
      code: 'not-found',
      field: 'designId',
    })
  })
})

function state() {
  return shop.studio.ask('drafts.state', { designId: shop.designId })
}
