import { useSyncExternalStore } from 'react'

/** The date where this machine stands, as the contract writes dates. */
export function todayDate(now: Date = new Date()): string {
  const two = (part: number) => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

const LOOK_AGAIN_MS = 60_000

function listen(onChange: () => void): () => void {
  const timer = setInterval(onChange, LOOK_AGAIN_MS)
  addEventListener('focus', onChange)
  return () => {
    clearInterval(timer)
    removeEventListener('focus', onChange)
  }
}

/** Today's date; changes by itself after midnight, for a studio left open overnight. */
export function useToday(): string {
  return useSyncExternalStore(listen, () => todayDate())
}
