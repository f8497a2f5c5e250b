import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { entryId } from '../../../shared-core/beads/entry-id.ts'
import type { Thread } from '../../../shared-core/beads/thread.ts'
import { formRefusals, threadRefusals } from '../../../shared-core/beads/user-forms.ts'
import { workshopTables } from '../store/table-rows.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import { refuseFirst } from './engine-tables.ts'
import type { ActHandler } from './handler.ts'
import { putForm, putThread, refuseTwin } from './put-entry.ts'

export const saveForm: ActHandler<'tables.saveForm'> = async (act, { form: typed }) => {
  const { decimalMark } = await getWorkshop(act.trx)
  const { forms } = await workshopTables(act.trx)
  const id =
    typed.id ??
    entryId(
      typed.name,
      forms.map((one) => one.id),
    )
  const form: BeadForm = { ...typed, id }
  const refusals = formRefusals(form, 'form', decimalMark)
  if (refusals.length > 0) refuseFirst(refusals)
  refuseTwin(forms, form, 'form.name', 'form')
  const put = await putForm(act, form)
  return { value: { id }, label: `${put === 'added' ? 'Added' : 'Saved'} the form ${form.name}` }
}

export const saveThread: ActHandler<'tables.saveThread'> = async (act, { thread: typed }) => {
  const { decimalMark } = await getWorkshop(act.trx)
  const { threads } = await workshopTables(act.trx)
  const id =
    typed.id ??
    entryId(
      typed.name,
      threads.map((one) => one.id),
    )
  const thread: Thread = { ...typed, id }
  const refusals = threadRefusals(thread, 'thread', decimalMark)
  if (refusals.length > 0) refuseFirst(refusals)
  refuseTwin(threads, thread, 'thread.name', 'thread')
  const put = await putThread(act, thread)
  return {
    value: { id },
    label: `${put === 'added' ? 'Added' : 'Saved'} the thread ${thread.name}`,
  }
}
