import { existsSync } from 'node:fs'
import { join } from 'node:path'
import type { Worker } from 'node:worker_threads'
import type { Refusal } from '../../../shared-core/refusal.ts'
import { Refused } from '../refused.ts'
import type { TaskAnswer } from './do-document-task.ts'
import type { DocumentTask } from './document-task.ts'

// Documents are made in a thread of their own, begun with the first: the studio answers meanwhile,
// and a document that nobody wants any more is ended with its thread.

type Waiting = Readonly<{ settle: (answer: TaskAnswer) => void; fail: (cause: unknown) => void }>
type Desk = Readonly<{ worker: Worker; waiting: Map<number, Waiting> }>
type Message = Readonly<{ id: number; answer?: TaskAnswer; fault?: string }>

/** After so long without work the thread is let go, and its memory with it. */
const RESTS_MS = 120_000

let desk: Desk | undefined
let rest: NodeJS.Timeout | undefined
let lastId = 0

/** Asks the thread of documents, which does one task after the other. */
export function makeDocument(task: DocumentTask): Promise<TaskAnswer> {
  clearTimeout(rest)
  desk ??= openDesk()
  const { worker, waiting } = desk
  lastId += 1
  const id = lastId
  // An idle thread keeps nobody from ending; one at work does.
  worker.ref()
  worker.postMessage({ id, task })
  return new Promise((settle, fail) => waiting.set(id, { settle, fail }))
}

/** Ends all documents under way, whose askers are refused; says how many they were. */
export function stopDocuments(): number {
  return desk === undefined ? 0 : closeDesk(desk, new Refused(STOPPED))
}

function openDesk(): Desk {
  const waiting: Desk['waiting'] = new Map()
  // Loaded with the first document, not with the studio.
  const { Worker } = process.getBuiltinModule('node:worker_threads')
  const opened: Desk = { worker: new Worker(workerFile()), waiting }
  opened.worker.on('message', (message: Message) => hear(opened, message))
  opened.worker.on('error', (cause) => closeDesk(opened, cause))
  opened.worker.on('exit', () => closeDesk(opened, new Error('the thread of documents ended')))
  return opened
}

function hear(opened: Desk, { id, answer, fault }: Message): void {
  const asker = opened.waiting.get(id)
  opened.waiting.delete(id)
  if (answer !== undefined) asker?.settle(answer)
  else asker?.fail(new Error(fault))
  if (opened.waiting.size > 0) return
  opened.worker.unref()
  rest = setTimeout(() => closeDesk(opened, new Refused(STOPPED)), RESTS_MS).unref()
}

function closeDesk(opened: Desk, cause: unknown): number {
  if (desk === opened) desk = undefined
  const askers = [...opened.waiting.values()]
  opened.waiting.clear()
  for (const { fail } of askers) fail(cause)
  void opened.worker.terminate()
  return askers.length
}

/** In the built studio the thread has a folder of its own beside the service's. */
function workerFile(): string {
  const built = join(import.meta.dirname, '..', 'documents', 'document-worker.cjs')
  return existsSync(built) ? built : join(import.meta.dirname, 'document-worker.ts')
}

const STOPPED: Refusal = {
  code: 'document-stopped',
  message: 'Making this document was stopped.',
  next: 'Ask for it again when you want it.',
}
