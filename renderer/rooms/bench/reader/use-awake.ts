import { useEffect } from 'react'
import { bridge } from '../../../app/bridge.ts'

/** Keeps the screen on while the work goes on; lets it go dark when paused, left or closed. */
export function useAwake(isWorking: boolean): void {
  useEffect(() => {
    if (!isWorking) return
    void bridge.shell('window.keepAwake', { awake: true })
    return () => void bridge.shell('window.keepAwake', { awake: false })
  }, [isWorking])
}
