import type { CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { err, ok, type Result } from '../../../../shared-core/result.ts'
import type { FileBytes } from '../../../app/files.ts'

/** A table as a plain file: the same JSON that the contract and the engine take. */
export function tableFile(own: CallOutput<'tables.own'>): FileBytes {
  const bytes = new TextEncoder().encode(`${JSON.stringify(own, undefined, 2)}\n`)
  const letters = Array.from(bytes, (byte) => String.fromCharCode(byte))
  return { fileName: 'beads-and-threads.json', base64: btoa(letters.join('')) }
}

/** What a chosen file holds; the contract says what in it cannot be used. */
export function readTableFile({
  fileName,
  base64,
}: FileBytes): Result<CallInput<'tables.take'>, Refusal> {
  const letters = atob(base64)
  const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0))
  try {
    return ok(JSON.parse(new TextDecoder().decode(bytes)))
  } catch {
    return err({
      code: 'not-a-table',
      message: `${fileName} is not a table of beads and threads.`,
      next: 'Choose a file that this page has saved, here or in another workshop.',
    })
  }
}
