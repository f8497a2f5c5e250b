import { describe, expect, it } from 'vitest'
import { openSmallWorkshop, smallBody } from '../small-workshop.ts'

const design = { name: 'Ebb studs', tags: [], body: smallBody, note: 'From a picture' }

describe('designs.save of a new design', () => {
  it('fills its first colourway in the same step, and one undo takes both back', async () => {
    const { studio, materials } = await openSmallWorkshop()
    const { ask } = studio
    const fillings = { 'slot:A': materials.slate, 'slot:B': materials.brine }
    const before = (await ask('designs.list', {})).designs.length
    const { id } = await ask('designs.save', { ...design, materials: fillings })
    const { colourways } = await ask('designs.read', { id })
    expect(colourways.map(({ materials: filled }) => filled)).toEqual([fillings])
    await ask('history.undo', {})
    expect((await ask('designs.list', {})).designs).toHaveLength(before)
    await ask('history.redo', {})
    expect((await ask('designs.read', { id })).colourways[0]?.materials).toEqual(fillings)
    await studio.close()
  })

  it('writes nothing when a material does not fit its slot', async () => {
    const { studio, materials } = await openSmallWorkshop()
    const { ask, refused } = studio
    const before = await ask('designs.list', {})
    const wrong = { ...design, materials: { 'slot:A': materials.thread } }
    expect(await refused('designs.save', wrong)).toMatchObject({
      code: 'wrong-kind',
      field: 'materials.slot:A',
    })
    const unknown = { ...design, materials: { 'slot:Z': materials.slate } }
    expect(await refused('designs.save', unknown)).toMatchObject({ code: 'unknown-key' })
    expect(await ask('designs.list', {})).toEqual(before)
    await studio.close()
  })

  it('does not fill the colourways of a design that has them', async () => {
    const { studio, designId, materials } = await openSmallWorkshop()
    const { refused } = studio
    const saved = { ...design, id: designId, materials: { 'slot:A': materials.slate } }
    expect(await refused('designs.save', saved)).toMatchObject({
      code: 'colourways-stand',
      field: 'materials',
    })
    await studio.close()
  })
})
