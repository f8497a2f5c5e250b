import { useEffect, useRef } from 'react'

type Timed = Readonly<{
  isOn: boolean
  /** How long this line or step is left, ms; `undefined` where the timer waits for the maker. */
  forMs: number | undefined
  /** Where the work stands: a new place begins the time anew. */
  at: number
  onDone: () => void
}>

/** Moves on by itself after the time of a line or step. */
export function useBeadTimer({ isOn, forMs, at, onDone }: Timed): void {
  const latest = useRef(onDone)
  latest.current = onDone
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new place begins the time anew
  useEffect(() => {
    if (!isOn || forMs === undefined) return
    const timer = setTimeout(() => latest.current(), forMs)
    return () => clearTimeout(timer)
  }, [isOn, forMs, at])
}
