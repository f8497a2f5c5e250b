import { type RefObject, useCallback, useEffect, useRef, useState } from 'react'
import { leadToRefused } from '../../../ui/refused-field.ts'

const KEY = 'tallystrand.table.wide'

type WideTable = Readonly<{
  isWide: boolean
  /** Folds them away or brings them back; while something typed there is refused it leads to that instead. */
  turn: (from: HTMLElement) => void
  /** Brings them back and goes to the button that folds them. */
  unfold: () => void
  foldButton: RefObject<HTMLButtonElement | null>
}>

/** Whether palette and figures are folded away for a larger picture; kept for the next time. */
export function useWideTable(): WideTable {
  const [isWide, setWide] = useState(() => localStorage.getItem(KEY) === 'yes')
  const foldButton = useRef<HTMLButtonElement>(null)
  useEffect(() => localStorage.setItem(KEY, isWide ? 'yes' : 'no'), [isWide])
  const turn = useCallback(
    (from: HTMLElement) => {
      // What was typed there and refused would go unseen with it.
      if (isWide || !leadToRefused(from)) setWide(!isWide)
    },
    [isWide],
  )
  const unfold = useCallback(() => {
    setWide(false)
    foldButton.current?.focus()
  }, [])
  return { isWide, turn, unfold, foldButton }
}
