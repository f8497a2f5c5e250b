import { useCallback, useEffect, useState } from 'react'

const KEY = 'tallystrand.table.wide'

/** Whether palette and figures are folded away for a larger picture; kept for the next time. */
export function useWideTable(): Readonly<{ isWide: boolean; turn: () => void }> {
  const [isWide, setWide] = useState(() => localStorage.getItem(KEY) === 'yes')
  const turn = useCallback(() => setWide((was) => !was), [])
  useEffect(() => localStorage.setItem(KEY, isWide ? 'yes' : 'no'), [isWide])
  return { isWide, turn }
}
