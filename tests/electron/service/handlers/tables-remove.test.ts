import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { addOwn, dropMaterial, formOf, saltCord, saveDrops, tideDrop } from '../own-entries.ts'
import { openSmallWorkshop, type SmallWorkshop, smallBody } from '../small-workshop.ts'

let workshop: SmallWorkshop

beforeEach(async () => {
  workshop = await openSmallWorkshop()
})
afterEach(() => workshop.studio.close())

const ask: SmallWorkshop['studio']['ask'] = (name, input) => workshop.studio.ask(name, input)
const refused: SmallWorkshop['studio']['refused'] = (name, input) =>
  workshop.studio.refused(name, input)

describe('tables.removeForm and tables.removeThread', () => {
  it('refuse one in use, naming what uses it', async () => {
    await addOwn(ask)
    await ask('materials.save', { material: dropMaterial })
    await saveDrops(ask)
    expect(await refused('tables.removeForm', { id: tideDrop.id })).toMatchObject({
      code: 'in-use',
      message: expect.stringMatching(/the material tide drop, slate, and in the design Drops\.$/),
      field: 'id',
    })
    expect(await refused('tables.removeThread', { id: saltCord.id })).toMatchObject({
      code: 'in-use',
      message: 'Salt cord is in use in the design Drops.',
    })
  })

  it('refuse one that lies on the drawing table after its version was taken back', async () => {
    const { designId } = workshop
    await addOwn(ask)
    const { name, tags } = await ask('designs.read', { id: designId })
    const body = { ...smallBody, threadId: saltCord.id }
    await ask('designs.save', { id: designId, name, tags, body, note: '' })
    await ask('drafts.open', { designId })
    await ask('history.undo', {})
    expect(await refused('tables.removeThread', { id: saltCord.id })).toMatchObject({
      code: 'in-use',
    })
    await ask('drafts.forget', { designId })
    await ask('tables.removeThread', { id: saltCord.id })
  })

  it('refuse one that would come back to the drawing table by redo', async () => {
    const { designId } = workshop
    await addOwn(ask)
    await ask('drafts.open', { designId })
    await ask('drafts.stroke', {
      ...{ designId, position: 0 },
      strokes: [
        {
          label: 'Another thread',
          redo: [{ kind: 'pieces', threadId: saltCord.id }],
          undo: [{ kind: 'pieces', threadId: smallBody.threadId }],
        },
      ],
    })
    await ask('drafts.moveTo', { designId, position: 0 })
    expect(await refused('tables.removeThread', { id: saltCord.id })).toMatchObject({
      code: 'in-use',
    })
  })

  it('take one away that nothing uses, once', async () => {
    await addOwn(ask)
    await ask('tables.removeForm', { id: tideDrop.id })
    expect(await formOf(ask, tideDrop.id)).toBeUndefined()
    expect(await refused('tables.removeForm', { id: tideDrop.id })).toMatchObject({
      code: 'not-found',
    })
    await ask('tables.saveForm', { form: tideDrop })
    expect(await formOf(ask, tideDrop.id)).toMatchObject({ origin: 'own' })
  })

  it('leave the reference tables alone', async () => {
    expect(await refused('tables.removeForm', { id: 'cylinder-11/0' })).toMatchObject({
      code: 'not-own',
    })
    expect(await refused('tables.removeThread', { id: 'braided-6lb' })).toMatchObject({
      code: 'not-own',
    })
  })
})
