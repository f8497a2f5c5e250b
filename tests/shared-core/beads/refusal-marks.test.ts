import { expect, it } from 'vitest'
import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { findForm, referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { formRefusals, threadRefusals } from '../../../shared-core/beads/user-forms.ts'
import { checkWeighing } from '../../../shared-core/beads/weighing.ts'
import { massMg } from '../../../shared-core/units/mass.ts'

const form = findForm(referenceTables, 'drop-2.8') as BeadForm
const figure = (value: number) => ({ value, low: value, high: value, basis: 'exact' as const })
const words = (refusals: readonly Readonly<{ message: string; next: string }>[]) =>
  refusals.map(({ message, next }) => `${message} ${next}`).join(' ')

it.each([
  ['.', 'A hole of 3.8 mm does not fit in a bead of 2.8 mm.', 'between 0.5 and 60 mm'],
  [',', 'A hole of 3,8 mm does not fit in a bead of 2,8 mm.', 'between 0,5 and 60 mm'],
] as const)('a bead form is refused with the mark %s', (decimal, hole, limits) => {
  expect(words(formRefusals({ ...form, holeMm: figure(3.8) }, 'form', decimal))).toContain(hole)
  const tiny = formRefusals({ ...form, diameterMm: figure(0.25) }, 'form', decimal)
  expect(words(tiny)).toContain(limits)
})

it('a thread is refused with the mark it is told, and with the point when told none', () => {
  const [thread] = referenceTables.threads
  if (thread === undefined) throw new Error('The tables hold a thread.')
  const thick = { ...thread, diameterMm: figure(3.5) }
  expect(words(threadRefusals(thick, 'thread', ','))).toContain('The figure 3,5 (3,5 to 3,5)')
  expect(words(threadRefusals(thick, 'thread'))).toContain('The figure 3.5 (3.5 to 3.5)')
})

it('a weighing far from the usual is told with the mark, and the form keeps its name', () => {
  const weighing = { beads: 100, grossMg: massMg(95), tareMg: massMg(0), digitMg: 1 }
  const checked = checkWeighing(weighing, form, ',')
  if (checked.ok) throw new Error('Beads this light are no drops.')
  expect(checked.error.message).toContain('1052,6 beads per gram')
  expect(checked.error.message).toContain('Drop 2.8 mm')
})
