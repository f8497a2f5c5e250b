import { useEffect } from 'react'
import { bridge } from './bridge.ts'

/** Says that the page takes input, once the component that asks stands on it and is seen. */
export function useSayInteractive(isSeen = true): void {
  useEffect(() => {
    if (isSeen) bridge.sayInteractive()
  }, [isSeen])
}
