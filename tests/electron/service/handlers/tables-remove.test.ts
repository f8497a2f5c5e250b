import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { dropBody, dropMaterial, saltCord, tideDrop } from '../own-entries.ts'
import { openSmallWorkshop, type SmallWorkshop, smallBody } from '../small-workshop.ts'

let workshop: SmallWorkshop

beforeEach(async () => {
  workshop = await openSmallWorkshop()
})
afterEach(() => workshop.studio.close())

const ask: SmallWorkshop['studio']['ask'] = (name, input) => workshop.studio.ask(name, input)
const refused: SmallWorkshop['studio']['refused'] = (name, input) =>
  workshop.studio.refused(name, input)

async function formOf(id: string) {
  return (await ask('tables.list', {})).forms.find((form) => form.id === id)
}

async function addOwn() {
  await ask('tables.saveForm', { form: tideDrop })
  await ask('tables.saveThread', { thread: saltCord })
}

const saveDrops = () => ask('designs.save', { name: 'Drops', tags: [], body: dropBody, note: '' })

describe('tables.removeForm and tables.removeThread', () => {
  it('refuse one in use, naming what uses it', async () => {
    await addOwn()
    await ask('materials.save', { material: dropMaterial })
    await saveDrops()
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
    await addOwn()
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
    await addOwn()
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
    await addOwn()
    await ask('tables.removeForm', { id: tideDrop.id })
    expect(await formOf(tideDrop.id)).toBeUndefined()
    expect(await refused('tables.removeForm', { id: tideDrop.id })).toMatchObject({
      code: 'not-found',
    })
    await ask('tables.saveForm', { form: tideDrop })
    expect(await formOf(tideDrop.id)).toMatchObject({ origin: 'own' })
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
