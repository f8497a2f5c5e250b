import { CSPProvider } from '@base-ui/react/csp-provider'
import { QueryClientProvider } from '@tanstack/react-query'
import { useEffect } from 'react'
import type { Refusal } from '../../shared-core/refusal.ts'
import { RefusalNotice } from '../ui/notice.tsx'
import { fetched } from './fetched.tsx'
import { queryClient } from './query-client.ts'
import { Shell } from './shell.tsx'
import { useCall } from './use-call.ts'
import { useSayInteractive } from './use-say-interactive.ts'

const FirstChoice = fetched(async () => (await import('./first-choice.tsx')).FirstChoice)

/** Remembers that a workshop was begun on this machine: a hint of what the first screen will be. */
const BEGUN = 'tallystrand.begun'

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
  // Asked for beside the workshop, so that no room is ever drawn with other beads than hers.
  const own = useCall('tables.own', {})
  const areBeadsKnown = (own.value ?? own.refusal) !== undefined
  const isBegun = value !== undefined && value.workshop !== null
  useEffect(() => {
    if (isBegun) localStorage.setItem(BEGUN, 'yes')
  }, [isBegun])
  if (refusal !== undefined && value === undefined) return <Refused refusal={refusal} />
  // Made ready while the service still opens its file, so that neither waits for the other.
  const mayBeFirst = value === undefined && localStorage.getItem(BEGUN) === null
  if (mayBeFirst || value?.workshop === null) return <FirstChoice isSeen={!mayBeFirst} />
  if (value === undefined || !areBeadsKnown) return <main aria-busy="true" />
  return <Shell workshopName={value.workshop.name} />
}

function Refused({ refusal }: Readonly<{ refusal: Refusal }>) {
  useSayInteractive()
  return (
    <main className="room">
      <h1>Tallystrand</h1>
      <RefusalNotice refusal={refusal} />
    </main>
  )
}
