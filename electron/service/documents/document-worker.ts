import { parentPort } from 'node:worker_threads'
import { doDocumentTask } from './do-document-task.ts'
import type { DocumentTask } from './document-task.ts'

// The entry of the thread of documents: one task after the other, each answered by its id.
let last: Promise<void> = Promise.resolve()

parentPort?.on('message', ({ id, task }: Readonly<{ id: number; task: DocumentTask }>) => {
  last = last.then(async () => {
    try {
      parentPort?.postMessage({ id, answer: await doDocumentTask(task) })
    } catch (cause) {
      const fault = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)
      parentPort?.postMessage({ id, fault })
    }
  })
})
