import { lazy, Suspense, useEffect, useState } from 'react'
import { Toasts } from '../ui/toasts.tsx'
import { FaultBoundary } from './fault-boundary.tsx'
import { NotYetRoom } from './not-yet-room.tsx'
import { usePlace } from './place.ts'
import { Rail } from './rail.tsx'
import { findRoom } from './rooms.ts'
import { ServiceLost } from './service-lost.tsx'
import { useKeptFocus } from './use-kept-focus.ts'
import { useShellKeys } from './use-shell-keys.ts'
import './shell.css'

const Finder = lazy(async () => ({ default: (await import('./finder.tsx')).Finder }))
const KeysSheet = lazy(async () => ({ default: (await import('./keys-sheet.tsx')).KeysSheet }))

/** The studio: the rail at the left, one room beside it, and what belongs to all rooms. */
export function Shell({ workshopName }: Readonly<{ workshopName: string }>) {
  const [isFinding, setFinding] = useState(false)
  const [showsKeys, setShowsKeys] = useState(false)
  const onFind = () => setFinding(true)
  const onKeys = () => setShowsKeys(true)
  useShellKeys({ onFind, onKeys })
  useKeptFocus()
  useEffect(fetchAhead, [])
  return (
    <div className="shell">
      <button type="button" className="skip-link" onClick={skipToMain}>
        Skip to the room
      </button>
      <Rail workshopName={workshopName} onFind={onFind} onKeys={onKeys} />
      <main id="main" className="shell-main" tabIndex={-1}>
        <ServiceLost />
        <CurrentRoom />
      </main>
      <Toasts />
      <Suspense>
        {isFinding && <Finder onClose={() => setFinding(false)} onKeys={onKeys} />}
        {showsKeys && <KeysSheet onClose={() => setShowsKeys(false)} />}
      </Suspense>
    </div>
  )
}

/** Once the first screen stands: what the first key or the first act will ask for. */
function fetchAhead(): () => void {
  const idle = requestIdleCallback(() => {
    void import('./finder.tsx')
    void import('../../shared-core/contract/calls.ts')
  })
  return () => cancelIdleCallback(idle)
}

function CurrentRoom() {
  const { room } = usePlace()
  const Found = findRoom(room)
  return (
    <FaultBoundary key={room}>
      <Suspense fallback={<div className="room" aria-busy="true" />}>
        {Found === undefined ? <NotYetRoom name={room} /> : <Found />}
      </Suspense>
    </FaultBoundary>
  )
}

/** A button, not a link: the address names a room and must stay. */
function skipToMain(): void {
  document.getElementById('main')?.focus()
}
