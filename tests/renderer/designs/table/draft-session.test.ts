import * as fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DraftSession } from '../../../../renderer/rooms/designs/table/draft-session.ts'
import type { StrokePort } from '../../../../renderer/rooms/designs/table/stroke-writer.ts'
import { slotLabel } from '../../../../shared-core/chart/chart.ts'
import { paintCells } from '../../../../shared-core/chart/edits/paint-cells.ts'
import { sharedChart } from '../../../../shared-core/chart/shared-rows.ts'
import type { Panel } from '../../../../shared-core/design/design.ts'
import { openSmallWorkshop, type SmallWorkshop } from '../../../electron/service/small-workshop.ts'

let shop: SmallWorkshop
beforeAll(async () => {
  shop = await openSmallWorkshop()
})
afterAll(() => shop.studio.close())

function portOf({ studio }: SmallWorkshop): StrokePort {
  // What a session sends is what the contract takes: the service parses it again.
  return {
    stroke: (input) => studio.answer('drafts.stroke', input) as never,
    moveTo: (input) => studio.answer('drafts.moveTo', input) as never,
    strokes: (input) => studio.answer('drafts.strokes', input) as never,
  }
}

async function open(): Promise<DraftSession> {
  const opened = await shop.studio.ask('drafts.open', { designId: shop.designId })
  return new DraftSession(opened, portOf(shop))
}

function paint(session: DraftSession, at: number): void {
  const panel = session.view().body.parts.find((part): part is Panel => part.kind === 'panel')
  if (panel === undefined) throw new Error('expected a panel')
  const chart = sharedChart(panel.chart)
  session.stroke(`Paint ${at}`, panel.id, paintCells(chart, [{ row: 0, at: 2 * at }], at % 2))
}

const fresh = () => shop.studio.ask('drafts.forget', { designId: shop.designId })

describe('DraftSession', () => {
  it('keeps in the store whatever is done, undone and done again, in the order it was done', async () => {
    const act = fc.constantFrom('paint', 'rename', 'undo', 'redo', 'reopen', 'hurry')
    await fc.assert(
      fc.asyncProperty(fc.array(act, { maxLength: 14 }), async (acts) => {
        await fresh()
        let session = await open()
        for (const [at, name] of acts.entries()) {
          if (name === 'paint') paint(session, at)
          else if (name === 'undo') await session.undo()
          else if (name === 'redo') await session.redo()
          else if (name === 'hurry') session.hurry()
          else if (name === 'reopen') {
            session.hurry()
            const { body, position } = session.view()
            session = await open()
            expect(session.view()).toMatchObject({ body, position })
          } else session.change('Rename', { ...session.view().body, unitName: `pair ${at}` })
        }
        await session.settled()
        const { body, position, undoLabel, redoLabel, refusal } = session.view()
        expect(refusal).toBeUndefined()
        expect((await open()).view()).toMatchObject({ body, position, undoLabel, redoLabel })
      }),
      { numRuns: 60 },
    )
  })

  it('takes beads and the slots they came with back in one step, also when the store brings them', async () => {
    await fresh()
    const first = await open()
    const before = first.view().body
    const panel = before.parts.find((part): part is Panel => part.kind === 'panel')
    const [slot] = before.palette
    if (panel === undefined || slot === undefined) throw new Error('expected a panel and a slot')
    const at = before.palette.length
    const palette = [...before.palette, { ...slot, label: slotLabel(at), colourHex: '#123456' }]
    const edit = paintCells(sharedChart(panel.chart), [{ row: 0, at: 0 }], at)
    first.stroke('Paste', panel.id, edit, palette)
    const after = first.view().body
    expect(after.palette).toEqual(palette)
    await first.settled()

    const second = await open()
    expect(second.view()).toMatchObject({ body: after, position: 1, undoLabel: 'Paste' })
    await second.undo()
    expect(second.view()).toMatchObject({ body: before, position: 0, undoLabel: undefined })
    await second.settled()

    const third = await open()
    expect(third.view()).toMatchObject({ body: before, position: 0, redoLabel: 'Paste' })
    await third.redo()
    expect(third.view()).toMatchObject({ body: after, position: 1 })
    await third.settled()
    expect((await open()).view().body).toEqual(after)
  })

  it('undoes further back than it keeps at hand, to the very first body, and comes back', async () => {
    await fresh()
    const session = await open()
    const first = session.view().body
    for (let at = 0; at < 2_700; at += 1) paint(session, 4 + (at % 7))
    const last = session.view().body
    while (session.view().undoLabel !== undefined) await session.undo()
    expect(session.view()).toMatchObject({ body: first, position: 0, isSaved: true })
    while (session.view().redoLabel !== undefined) await session.redo()
    expect(session.view().body).toEqual(last)
    await session.settled()
    expect((await open()).view().body).toEqual(last)
  })

  it('says why a stroke could not be kept, and keeps it when it is tried again', async () => {
    await fresh()
    const opened = await shop.studio.ask('drafts.open', { designId: shop.designId })
    let isFull = true
    const refused = {
      ok: false,
      error: { code: 'disk-full', message: 'The disk is full.', next: 'Make room.' },
    } as const
    const real = portOf(shop)
    const port = {
      ...real,
      stroke: async (input: never) => (isFull ? refused : real.stroke(input)),
    }
    const session = new DraftSession(opened, port as StrokePort)
    paint(session, 9)
    paint(session, 10)
    await session.settled()
    expect(session.view().refusal).toMatchObject({ code: 'disk-full' })
    isFull = false
    session.tryAgain()
    await session.settled()
    expect(session.view().refusal).toBeUndefined()
    expect((await open()).view()).toMatchObject({ body: session.view().body, position: 2 })
  })
})
