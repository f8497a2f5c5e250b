import { findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import { threadKey } from '../../../../shared-core/design/bill.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { capital } from '../../../app/capital.ts'
import type { MaterialRow } from '../../designs/page/open-design.ts'

type Stock = Readonly<{
  fillings: Readonly<Record<string, string>>
  materials: readonly MaterialRow[]
}>

/** The thread to cut from and the needle to thread: `Braided thread, smoke. Needle size 12.` */
export function toolWords(
  { threadId, needleSize }: Pick<DesignBody, 'threadId' | 'needleSize'>,
  { fillings, materials }: Stock,
  tables: BeadTables,
): string {
  const chosen = materials.find(({ id }) => id === fillings[threadKey])
  const drawer = chosen === undefined || chosen.drawer === '' ? '' : `, drawer ${chosen.drawer}`
  const name = chosen?.name ?? findThread(tables, threadId)?.name ?? 'thread'
  return `${capital(name)}${drawer}. Needle size ${needleSize}.`
}
