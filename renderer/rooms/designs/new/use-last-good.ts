import { useRef } from 'react'

/** The latest value there was: a picture stays while something that cannot be drawn is being typed. */
export function useLastGood<T>(value: T | undefined): T | undefined {
  const good = useRef(value)
  if (value !== undefined) good.current = value
  return good.current
}
