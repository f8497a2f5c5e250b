import { CSPProvider } from '@base-ui/react/csp-provider'
import { QueryClientProvider } from '@tanstack/react-query'
import { lazy, Suspense, useEffect } from 'react'
import { RefusalNotice } from '../ui/notice.tsx'
import { bridge } from './bridge.ts'
import { queryClient } from './query-client.ts'
import { Shell } from './shell.tsx'
import { useCall } from './use-call.ts'

const FirstChoice = lazy(async () => ({
  default: (await import('./first-choice.tsx')).FirstChoice,
}))

/** The whole page. The security policy allows no style elements, so the library must write none. */
export function App() {
  return (
    <CSPProvider disableStyleElements>
      <QueryClientProvider client={queryClient}>
        <Studio />
      </QueryClientProvider>
    </CSPProvider>
  )
}

function Studio() {
  const { value, refusal } = useCall('workshop.read', {})
  const isThere = value !== undefined || refusal !== undefined
  useEffect(() => {
    if (isThere) bridge.sayInteractive()
  }, [isThere])
  if (refusal !== undefined && value === undefined) {
    return (
      <main className="room">
        <h1>Tallystrand</h1>
        <RefusalNotice refusal={refusal} />
      </main>
    )
  }
  if (value === undefined) return <main aria-busy="true" />
  if (value.workshop === null) {
    return (
      <Suspense>
        <FirstChoice />
      </Suspense>
    )
  }
  return <Shell workshopName={value.workshop.name} />
}
