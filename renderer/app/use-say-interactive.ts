import { useEffect } from 'react'
import { bridge } from './bridge.ts'

/** Says that the page takes input, once the component that asks stands on it. */
export function useSayInteractive(): void {
  useEffect(() => bridge.sayInteractive(), [])
}
