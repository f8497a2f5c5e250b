import { useEffect, useState } from 'react'

/** Long enough that a card which only flies past asks for nothing. */
const SETTLED_MS = 80

/** Whether a card has been on the page for a moment. */
export function useSettledIn(): boolean {
  const [isSettled, setSettled] = useState(false)
  useEffect(() => {
    const later = setTimeout(() => setSettled(true), SETTLED_MS)
    return () => clearTimeout(later)
  }, [])
  return isSettled
}
