import { createService } from '../../../electron/service/service.ts'
import type { CallInput, CallName, CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'

/** The service without a file, its answers checked against the contract: what needs no store, asked as a script does. */
export async function openEngine() {
  const service = await createService({
    now: () => 0,
    newId: (prefix) => prefix,
    checkOutputs: true,
  })
  return {
    close: () => service.close(),
    ask: async <N extends CallName>(name: N, input: CallInput<N>): Promise<CallOutput<N>> => {
      const answer = await service.answer(name, input)
      if (!answer.ok) throw new Error(`${answer.error.code}: ${answer.error.message}`)
      return answer.value as CallOutput<N>
    },
    /** What is refused; nothing where the input is taken. */
    refusal: async (name: CallName, input: unknown): Promise<Refusal | undefined> => {
      const answer = await service.answer(name, input)
      return answer.ok ? undefined : answer.error
    },
  }
}
