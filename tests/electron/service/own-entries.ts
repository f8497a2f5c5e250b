import type { CallInput } from '../../../shared-core/contract/calls.ts'
import { estimated, measured } from '../../../shared-core/units/spread.ts'
import { type SmallWorkshop, smallBody } from './small-workshop.ts'

/** A bead form the reference tables do not know, measured at the bench. */
export const tideDrop = {
  id: 'tide-drop',
  name: 'Tide drop 3,5 mm',
  family: 'drop' as const,
  sizeLabel: '3.5 mm',
  diameterMm: measured(3.4, 3.5, 3.6),
  lengthMm: measured(3.3, 3.4, 3.6),
  holeMm: measured(0.75, 0.8, 0.85),
  beadsPerGram: measured(14, 15, 16),
  cullRate: estimated(0.01, 0.03, 0.05),
}

/** A thread the reference tables do not know. */
export const saltCord = {
  id: 'salt-cord',
  name: 'Salt cord',
  construction: 'twisted' as const,
  diameterMm: measured(0.2, 0.22, 0.25),
  tex: 50,
}

type Body = CallInput<'designs.save'>['body']
/** The small design in beads and a thread of one's own. */
export const dropBody: Body = {
  ...smallBody,
  palette: smallBody.palette.map((slot) => ({ ...slot, formId: tideDrop.id })),
  parts: smallBody.parts.map((part) =>
    part.kind === 'panel' ? { ...part, formId: tideDrop.id } : part,
  ),
  threadId: saltCord.id,
}

/** A material that is such beads. */
export const dropMaterial = {
  ...{ code: 'TD', name: 'tide drop, slate', kind: 'bead' as const, formId: tideDrop.id },
  ...{ colourHex: '#4b5a63', finish: 'opaque' as const, lotsMatter: false, lowAt: null },
  ...{ tareMg: null, drawer: '', note: '', declaration: '' },
}

type Ask = SmallWorkshop['studio']['ask']

/** Adds the form and the thread to the workshop’s own tables. */
export async function addOwn(ask: Ask): Promise<void> {
  await ask('tables.saveForm', { form: tideDrop })
  await ask('tables.saveThread', { thread: saltCord })
}

/** Saves a design in that form and thread. */
export const saveDrops = (ask: Ask) =>
  ask('designs.save', { name: 'Drops', tags: [], body: dropBody, note: '' })

/** A form as the tables list it; undefined where they have none of that id. */
export async function formOf(ask: Ask, id: string) {
  return (await ask('tables.list', {})).forms.find((form) => form.id === id)
}
