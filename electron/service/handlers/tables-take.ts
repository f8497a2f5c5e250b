import { formRefusals, threadRefusals } from '../../../shared-core/beads/user-forms.ts'
import { refuse } from '../refused.ts'
import { workshopTables } from '../store/table-rows.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import { refuseFirst } from './engine-tables.ts'
import type { ActHandler } from './handler.ts'
import { type Named, type Put, putForm, putThread, refuseTwin } from './put-entry.ts'

export const takeTables: ActHandler<'tables.take'> = async (act, { forms = [], threads = [] }) => {
  const { decimalMark } = await getWorkshop(act.trx)
  if (forms.length + threads.length === 0) {
    refuse(
      'nothing-to-take',
      'The table holds no bead form and no thread.',
      'Choose a table with at least one of them.',
      'forms',
    )
  }
  const refusals = [
    ...forms.flatMap((form, at) => formRefusals(form, `forms.${at}`, decimalMark)),
    ...threads.flatMap((thread, at) => threadRefusals(thread, `threads.${at}`, decimalMark)),
  ]
  if (refusals.length > 0) refuseFirst(refusals)
  refuseTwice(forms, 'forms')
  refuseTwice(threads, 'threads')
  const done: Put[] = []
  for (const form of forms) done.push(await putForm(act, form))
  for (const thread of threads) done.push(await putThread(act, thread))
  const known = await workshopTables(act.trx)
  forms.forEach((form, at) => {
    refuseTwin(known.forms, form, `forms.${at}.name`, 'form')
  })
  threads.forEach((thread, at) => {
    refuseTwin(known.threads, thread, `threads.${at}.name`, 'thread')
  })
  const count = (put: Put) => done.filter((one) => one === put).length
  return {
    value: { added: count('added'), replaced: count('replaced'), same: count('same') },
    label: `Took in a table of ${done.length} forms and threads`,
  }
}

function refuseTwice(entries: readonly Named[], field: 'forms' | 'threads'): void {
  const at = entries.findIndex(
    (entry, index) => entries.findIndex((one) => one.id === entry.id) < index,
  )
  if (at < 0) return
  refuse(
    'id-twice',
    `Two of the ${field} have the id ${entries[at]?.id}.`,
    'Give each its own id.',
    `${field}.${at}.id`,
  )
}
