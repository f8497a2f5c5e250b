import { describe, expect, it } from 'vitest'
import { smallPicture } from '../../../renderer/rooms/designs/assembly/small-picture.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { exactly } from '../../../shared-core/units/spread.ts'
import { tidewrack } from './sample-body.ts'

const body = tidewrack()
const looks = body.palette.map(() => ({ hex: '#2b3f4c', finish: 'matte' }) as const)
const version = { versionId: 'ver_000001', body, looks, tables: referenceTables }

/** The tables with every form of the design half as long again. */
const longer = {
  ...referenceTables,
  forms: referenceTables.forms.map((form) => ({
    ...form,
    lengthMm: exactly(form.lengthMm.value * 1.5),
  })),
}

describe('smallPicture', () => {
  it('keeps its name while version, beads and measures are the same', () => {
    expect(smallPicture({ ...version, looks: [...looks] }).key).toBe(smallPicture(version).key)
  })

  it('is another picture in other beads, and once a form is measured anew', () => {
    const { key, assembly } = smallPicture(version)
    const other = looks.map((look) => ({ ...look, finish: 'gloss' as const }))
    expect(smallPicture({ ...version, looks: other }).key).not.toBe(key)
    const anew = smallPicture({ ...version, tables: longer })
    expect(anew.key).not.toBe(key)
    expect(anew.assembly()?.scene.heightMm).not.toBe(assembly()?.scene.heightMm)
  })
})
