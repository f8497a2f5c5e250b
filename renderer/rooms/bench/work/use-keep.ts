import { useEffect, useMemo } from 'react'
import type { CallInput } from '../../../../shared-core/contract/calls.ts'
import { bridge } from '../../../app/bridge.ts'
import { refreshAfter } from '../../../app/refresh.ts'
import { showToast } from '../../../ui/toast-store.ts'

export type Kept = CallInput<'bench.keep'>

/** Keeps what is told last, one request at a time; whatever came in between is passed over. */
export function openKeeper(
  keep: (kept: Kept) => Promise<Readonly<{ ok: boolean }>>,
  onRefused: () => void,
) {
  let next: Kept | undefined
  let last: Kept | undefined
  let working: Promise<void> | undefined
  async function work() {
    while (next !== undefined) {
      const kept = next
      next = undefined
      const answer = await keep(kept)
      if (!answer.ok) onRefused()
    }
    working = undefined
  }
  return {
    tell: (kept: Kept) => {
      next = kept
      last = kept
      working ??= work()
    },
    /** What was told last, kept or on its way. */
    last: () => last,
    /** Waits until what was told last is kept. */
    settled: () => working ?? Promise.resolve(),
  }
}

/** Keeps place and time of some work at once, without ever holding up the reader. */
export function useKeep() {
  const keeper = useMemo(() => openKeeper((kept) => bridge.request('bench.keep', kept), warn), [])
  useEffect(
    () => () => {
      // The lists of the Bench show it once the page is left, not at every bead.
      // Once the reader has told its last: it does so as it goes, after this.
      void Promise.resolve()
        .then(() => keeper.settled())
        .then(() => refreshAfter('bench.keep'))
    },
    [keeper],
  )
  return keeper
}

function warn(): void {
  showToast({
    tone: 'refused',
    text: 'Your place could not be kept. Note the row you are on, and open this work again.',
  })
}
