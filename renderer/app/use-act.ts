import { useState } from 'react'
import type { Answer, CallInput, CallName, CallOutput } from '../../shared-core/contract/calls.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import { showToast } from '../ui/toast-store.ts'
import { bridge } from './bridge.ts'
import { refreshAfter } from './refresh.ts'
import { undo } from './step-back.ts'
import { useHeldRefusal } from './use-held-refusal.ts'

type ActOptions<N extends CallName> = Readonly<{
  /** What was done, in the maker's words, for the toast with its way back; no toast without it. */
  said?: (output: CallOutput<N>, input: CallInput<N>) => string
  /**
   * What is typed, as it stands now, as one value or a list of them: a refusal holds for what it was of, and
   * is gone once that is mended.
   */
  of?: unknown
}>

/** One act of the contract: how to do it, whether it is under way, and why it was last refused. */
export type Act<N extends CallName> = Readonly<{
  act: (input: CallInput<N>) => Promise<Answer<CallOutput<N>>>
  isBusy: boolean
  refusal: Refusal | undefined
}>

/** An act: done through the contract, told in a toast that can take it back, every screen refreshed. */
export function useAct<N extends CallName>(name: N, { said, of }: ActOptions<N> = {}): Act<N> {
  const [isBusy, setBusy] = useState(false)
  const { refusal, refuse } = useHeldRefusal(of)

  async function act(input: CallInput<N>): Promise<Answer<CallOutput<N>>> {
    setBusy(true)
    refuse(undefined)
    const answer = await bridge.request(name, input)
    if (answer.ok) {
      await refreshAfter(name)
      // Undo would take back the step before, which is another one.
      if (said !== undefined && answer.unchanged) showToast({ text: NOTHING_CHANGED })
      else if (said !== undefined) {
        showToast({
          isStep: true,
          text: said(answer.value, input),
          action: { label: 'Undo', run: () => void undo() },
        })
      }
    } else {
      refuse(answer.error)
    }
    setBusy(false)
    return answer
  }

  return { act, isBusy, refusal }
}

const NOTHING_CHANGED = 'Nothing to change: it stands so already.'
