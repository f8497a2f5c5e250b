import type { Answer } from '../../shared-core/contract/calls.ts'
import { refuse } from './refuse.ts'

type Waiting = Readonly<{ message: unknown; settle: (answer: Answer<unknown>) => void }>

type ServiceLine = Readonly<{
  request: (name: string, input: unknown) => Promise<Answer<unknown>>
  use: (port: MessagePort) => void
  cut: () => void
}>

/**
 * The page's line to the service.
 *
 * What is asked before the first port arrives waits for it. When the service stops, everything
 * unanswered is refused, and so is everything asked until there is a new port.
 */
export function openServiceLine(): ServiceLine {
  const waiting = new Map<number, Waiting>()
  let port: MessagePort | undefined
  let isCut = false
  let lastId = 0

  function use(next: MessagePort): void {
    // What went over an old line may have been done already: never asked twice.
    if (port !== undefined) cut()
    port = next
    isCut = false
    next.onmessage = ({ data }: MessageEvent<{ id: number; answer: Answer<unknown> }>) => {
      waiting.get(data.id)?.settle(data.answer)
      waiting.delete(data.id)
    }
    for (const { message } of waiting.values()) next.postMessage(message)
  }

  function cut(): void {
    port?.close()
    port = undefined
    isCut = true
    for (const { settle } of waiting.values()) settle(serviceStopped())
    waiting.clear()
  }

  function request(name: string, input: unknown): Promise<Answer<unknown>> {
    if (isCut) return Promise.resolve(serviceStopped())
    lastId += 1
    const message = { id: lastId, name, input }
    return new Promise((settle) => {
      waiting.set(message.id, { message, settle })
      port?.postMessage(message)
    })
  }

  return { request, use, cut }
}

function serviceStopped(): Answer<never> {
  return refuse(
    'service-stopped',
    'The part of the studio that keeps your data has stopped.',
    'Choose “Start again” in the question on the screen.',
  )
}
