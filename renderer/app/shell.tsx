import { useEffect, useState } from 'react'
import { Toasts } from '../ui/toasts.tsx'
import { FaultBoundary } from './fault-boundary.tsx'
import { fetched } from './fetched.tsx'
import { NotYetRoom } from './not-yet-room.tsx'
import { usePlace } from './place.ts'
import { Rail } from './rail.tsx'
import { findRoom } from './rooms.ts'
import { ServiceLost } from './service-lost.tsx'
import { useKeptFocus } from './use-kept-focus.ts'
import { useSayInteractive } from './use-say-interactive.ts'
import { useShellKeys } from './use-shell-keys.ts'
import './shell.css'

const Finder = fetched(async () => (await import('./finder.tsx')).Finder)
const KeysSheet = fetched(async () => (await import('./keys-sheet.tsx')).KeysSheet)

/** The studio: the rail at the left, one room beside it, and what belongs to all rooms. */
export function Shell({ workshopName }: Readonly<{ workshopName: string }>) {
  const [isFinding, setFinding] = useState(false)
  const [showsKeys, setShowsKeys] = useState(false)
  const onFind = () => setFinding(true)
  const onKeys = () => setShowsKeys(true)
  useShellKeys({ onFind, onKeys })
  useKeptFocus()
  useEffect(fetchAhead, [])
  useSayInteractive()
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
      {isFinding && <Finder onClose={() => setFinding(false)} onKeys={onKeys} />}
      {showsKeys && <KeysSheet onClose={() => setShowsKeys(false)} />}
    </div>
  )
}

/** Once the first screen stands: what the first key or the first act will ask for. */
function fetchAhead(): () => void {
  const idle = requestIdleCallback(() => {
    void Finder.ahead()
    void import('../../shared-core/contract/calls.ts')
  })
  return () => cancelIdleCallback(idle)
}

function CurrentRoom() {
  const { room } = usePlace()
  const Found = findRoom(room)
  return (
    <FaultBoundary key={room}>
      {Found === undefined ? <NotYetRoom name={room} /> : <Found />}
    </FaultBoundary>
  )
}

/** A button, not a link: the address names a room and must stay. */
function skipToMain(): void {
  document.getElementById('main')?.focus()
}
