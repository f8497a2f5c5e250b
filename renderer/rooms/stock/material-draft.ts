import type { CallInput } from '../../../shared-core/contract/calls.ts'
import type { MaterialRow } from './material-words.ts'

/** What is said of a material, as it is being typed. */
export type MaterialFields = CallInput<'materials.save'>['material']

/** The fields that can say what is wrong with them, as the contract names them. */
export const materialFieldNames = [
  'material.name',
  'material.code',
  'material.formId',
  'material.colourHex',
  'material.finish',
  'material.drawer',
  'material.lowAt',
  'material.tareMg',
  'material.declaration',
  'material.note',
] as const

/** What a part of the form is given. */
export type MaterialPart = Readonly<{
  fields: MaterialFields
  set: (patch: Partial<MaterialFields>) => void
  at: (field: (typeof materialFieldNames)[number]) => string | undefined
}>

const blank: MaterialFields = {
  code: '',
  name: '',
  kind: 'bead',
  formId: 'cylinder-11/0',
  colourHex: '#4b5a63',
  finish: 'opaque',
  lotsMatter: true,
  lowAt: null,
  tareMg: null,
  drawer: '',
  note: '',
  declaration: '',
}

/** What another kind begins with; what was said of the kind before is no longer asked. */
export function kindPatch(kind: MaterialFields['kind']): Partial<MaterialFields> {
  const isBead = kind === 'bead'
  return {
    kind,
    formId: isBead ? 'cylinder-11/0' : kind === 'thread' ? 'braided-6lb' : null,
    colourHex: isBead ? '#4b5a63' : null,
    finish: isBead ? 'opaque' : null,
    lotsMatter: isBead,
    lowAt: null,
    tareMg: null,
  }
}

/** What stands in the fields at first. */
export function fieldsOf(material: MaterialRow | undefined): MaterialFields {
  if (material === undefined) return blank
  const { code, name, kind, formId, colourHex, finish, lotsMatter } = material
  const { lowAt, tareMg, drawer, note, declaration } = material
  return {
    code,
    name,
    kind,
    formId,
    colourHex,
    finish,
    lotsMatter,
    lowAt,
    tareMg,
    drawer,
    note,
    declaration,
  }
}
