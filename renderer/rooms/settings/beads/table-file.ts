import type { CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { err, ok, type Result } from '../../../../shared-core/result.ts'
import { fromBase64, textToBase64 } from '../../../app/base64.ts'
import type { FileBytes } from '../../../app/files.ts'

/** A table as a plain file: the same JSON that the contract and the engine take. */
export function tableFile(own: CallOutput<'tables.own'>): FileBytes {
  const base64 = textToBase64(`${JSON.stringify(own, undefined, 2)}\n`)
  return { fileName: 'beads-and-threads.json', base64 }
}

/** What a chosen file holds; the contract says what in it cannot be used. */
export function readTableFile({
  fileName,
  base64,
}: FileBytes): Result<CallInput<'tables.take'>, Refusal> {
  try {
    return ok(JSON.parse(new TextDecoder().decode(fromBase64(base64))))
  } catch {
    return err({
      code: 'not-a-table',
      message: `${fileName} is not a table of beads and threads.`,
      next: 'Choose a file that this page has saved, here or in another workshop.',
    })
  }
}
