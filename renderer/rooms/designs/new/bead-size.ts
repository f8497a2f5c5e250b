import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import { type BeadSize, threadGapMm } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { Draft } from '../draft/draft.ts'

/** The bead of a draft: its form, and its size with the gap that the draft's thread leaves. */
export function beadSizeOf(
  { formId, threadId }: Pick<Draft, 'formId' | 'threadId'>,
  tables: BeadTables,
): Readonly<{ form: BeadForm; size: BeadSize }> {
  const [first] = tables.forms
  const form = findForm(tables, formId) ?? first
  if (form === undefined) throw new RangeError('The tables of bead forms are empty.')
  const thread = findThread(tables, threadId)
  return {
    form,
    size: {
      diameterMm: form.diameterMm.value,
      lengthMm: form.lengthMm.value,
      threadMm: threadGapMm(thread?.diameterMm.value ?? 0),
    },
  }
}
