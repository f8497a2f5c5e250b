import { newId, openService } from '../../../electron/service/open-service.ts'
import { createService } from '../../../electron/service/service.ts'
import type { CallInput, CallName, CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'

export { openService }

export const TODAY = '2026-11-25'

/** A studio over a real store, whose answers are checked against the contract. */
export type Studio = Readonly<{
  /** The value of a call; a refusal fails the test. */
  ask: <N extends CallName>(name: N, input: CallInput<N>) => Promise<CallOutput<N>>
  /** The refusal of a call; a value fails the test. */
  refused: (name: CallName, input: unknown) => Promise<Refusal>
  answer: Awaited<ReturnType<typeof createService>>['answer']
  close: () => Promise<void>
}>

/** Opens a studio on a file, or in memory. Inner faults fail the test with their cause. */
export async function openStudio(file = ':memory:'): Promise<Studio> {
  const faults: string[] = []
  const service = await createService({
    file,
    now: clock(),
    newId,
    log: (message) => faults.push(message),
    checkOutputs: true,
  })
  return {
    ask: async (name, input) => {
      const answer = await service.answer(name, input)
      if (!answer.ok) {
        throw new Error(`${name}: ${JSON.stringify(answer.error)} ${faults.join('\n')}`)
      }
      return answer.value as never
    },
    refused: async (name, input) => {
      const answer = await service.answer(name, input)
      if (answer.ok) throw new Error(`${name} was not refused: ${JSON.stringify(answer.value)}`)
      if (answer.error.code === 'internal') throw new Error(faults.join('\n'))
      return answer.error
    },
    answer: service.answer,
    close: service.close,
  }
}

/** A clock that moves a second at every look. */
function clock(): () => number {
  let atMs = Date.parse(`${TODAY}T10:00:00`)
  return () => {
    atMs += 1_000
    return atMs
  }
}

/** A studio with an empty workshop. */
export async function openEmptyStudio(file?: string): Promise<Studio> {
  const studio = await openStudio(file)
  await studio.ask('workshop.begin', beginning('empty'))
  return studio
}

/** A studio with the Saltmarsh sample. */
export async function openSampleStudio(file?: string): Promise<Studio> {
  const studio = await openStudio(file)
  await studio.ask('workshop.begin', beginning('sample'))
  return studio
}

function beginning(kind: 'empty' | 'sample'): CallInput<'workshop.begin'> {
  return {
    with: kind,
    name: 'Saltmarsh Beadworks',
    currency: 'EUR',
    decimalMark: ',',
    today: TODAY,
  }
}
