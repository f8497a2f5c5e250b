import { useEffect, useState } from 'react'
import { Notice } from '../ui/notice.tsx'
import { bridge } from './bridge.ts'
import { queryClient } from './query-client.ts'

/** Stands over every room while the part that keeps the data does not answer. */
export function ServiceLost() {
  const [isLost, setLost] = useState(false)
  useEffect(
    () =>
      bridge.onService((state) => {
        setLost(state === 'stopped')
        if (state === 'running') void queryClient.invalidateQueries()
      }),
    [],
  )
  if (!isLost) return null
  return (
    <Notice kind="refusal" title="The part of the studio that keeps your data has stopped.">
      What was saved before is safe. Choose “Start again” in the question on the screen; what you
      are typing here stays.
    </Notice>
  )
}
