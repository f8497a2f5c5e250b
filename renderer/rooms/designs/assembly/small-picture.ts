import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { type AssembleInput, type Assembly, assemble } from './assemble.ts'
import { isLong, layAcross } from './lay-across.ts'

/** How a version is drawn small, all of a unit, and the name of that picture: the same name is the same picture. */
export type SmallPicture = Readonly<{ key: string; assembly: () => Assembly | undefined }>

/** The picture of a version in some beads; it is made only where it is not kept already. */
export function smallPicture({
  versionId,
  ...drawn
}: Omit<AssembleInput, 'copies'> & Readonly<{ versionId: string }>): SmallPicture {
  const { body, looks, tables } = drawn
  const colours = looks.map(({ hex, finish }) => hex + finish)
  return {
    key: [versionId, ...colours, ...measures(body, tables)].join(' '),
    assembly: () => {
      const whole = assemble({ ...drawn, copies: 'all' })
      const isFlat = body.parts.every(({ kind }) => kind === 'panel')
      return whole && isFlat && isLong(whole.scene) ? layAcross(whole) : whole
    },
  }
}

/** What the tables say of its beads and its thread: a workshop measures some anew. */
function measures({ palette, parts, threadId }: DesignBody, tables: BeadTables) {
  const ids = [...palette, ...parts].flatMap((one) => ('formId' in one ? [one.formId] : []))
  const forms = [...new Set(ids)].map((id) => {
    const form = findForm(tables, id)
    return `${form?.family} ${form?.diameterMm.value} ${form?.lengthMm.value}`
  })
  return [...forms, findThread(tables, threadId)?.diameterMm.value]
}
