import type { Answer } from '../../shared-core/contract/calls.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import { err, type Result } from '../../shared-core/result.ts'
import { takeTurn } from './answer.ts'
import type { CallBook } from './call-book.ts'
import type { Desk } from './desk.ts'
import { firstCalls } from './first-calls.ts'
import { isPure } from './pure-names.ts'
import { openStore, type Store } from './store/open-store.ts'

/** Answers the contract over one workshop's file. */
export type Service = Readonly<{
  /** Never throws: whatever goes wrong is a refusal. */
  answer: (name: string, input: unknown) => Promise<Answer<unknown>>
  /** Waits for the call under way, then closes the file. */
  close: () => Promise<void>
  /** Why the file could not be opened; every call that needs it answers with this. */
  refusal?: Refusal
}>

export type ServiceOptions = Readonly<{
  /** A file, or `:memory:`; empty or absent for calls that need no store. */
  file?: string | undefined
  /** Milliseconds since 1970. */
  now: () => number
  /** A new id with a prefix, such as `mat_3f9k2m7q0x1y`. */
  newId: (prefix: string) => string
  /** Where the cause of an inner fault is noted. */
  log?: (message: string) => void
  /** Checks answers against the contract too. */
  checkOutputs?: boolean
}>

/**
 * Opens a workshop's file and answers calls on it, one after the other.
 *
 * A file that is refused is left as it is; the service still answers what needs no file.
 */
export async function createService(options: ServiceOptions): Promise<Service> {
  const { file = '', now, newId, log = toStderr, checkOutputs = false } = options
  const store: Result<Store, Refusal> = file === '' ? err(NO_FILE) : await openStore(file)
  const desk: Desk = { store, memory: new Map(), now, newId, log, checkOutputs }
  // One at a time: each call sees what the one before has done, and none sees half of another.
  let last: Promise<unknown> = Promise.resolve()
  const inTurn = (name: string, input: unknown) => {
    const turn = last.then(() => takeTurn(desk, bookOf, name, input))
    last = turn
    return turn
  }
  return {
    answer: async (name, input) => {
      const finish = await (isPure(name)
        ? takeTurn(desk, bookOf, name, input)
        : inTurn(name, input))
      return finish()
    },
    close: async () => {
      await last
      if (store.ok) await store.value.close()
    },
    ...(store.ok ? {} : { refusal: store.error }),
  }
}

/** All calls are loaded with the first one that the first screen does not ask. */
async function bookOf(name: string): Promise<CallBook> {
  if (Object.hasOwn(firstCalls.calls, name)) return firstCalls
  return (await import('./all-calls.ts')).allCalls
}

const NO_FILE: Refusal = {
  code: 'no-file',
  message: 'No workshop file is open.',
  next: 'Open a workshop file first.',
}

function toStderr(message: string): void {
  process.stderr.write(`${message}\n`)
}
