import { useEffect } from 'react'

const FOCUSABLE =
  'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), [tabindex]'
const REMEMBERED = 8
/** Sheets and dialogs give the focus back by themselves first. */
const SETTLE_MS = 120

/** Where a focused thing stood in a list or a table, to find its neighbour once it is gone. */
type Standing = Readonly<{ list: Element; at: number }>

/**
 * Keeps the keyboard's place: when what has the focus is removed or can no longer be used, the focus goes
 * to the row that took its place, else to what had it before, else to the room's title.
 */
export function useKeptFocus(): void {
  useEffect(() => {
    let trail: readonly HTMLElement[] = []
    let standing: Standing | undefined
    let timer: ReturnType<typeof setTimeout> | undefined
    const onFocus = ({ target }: FocusEvent) => {
      if (!(target instanceof HTMLElement)) return
      trail = [target, ...trail.filter((one) => one !== target)].slice(0, REMEMBERED)
      standing = standingOf(target)
    }
    const look = () => {
      const [last, ...before] = trail
      if (last === undefined || hasFocus() || isUsable(last)) return
      const next = neighbour(standing) ?? before.find(isUsable) ?? document.querySelector('h1')
      ;(next as HTMLElement | null)?.focus()
    }
    const changes = new MutationObserver(() => {
      if (hasFocus()) return
      clearTimeout(timer)
      timer = setTimeout(look, SETTLE_MS)
    })
    addEventListener('focusin', onFocus)
    changes.observe(document.body, {
      subtree: true,
      childList: true,
      attributes: true,
      attributeFilter: ['disabled'],
    })
    return () => {
      removeEventListener('focusin', onFocus)
      changes.disconnect()
      clearTimeout(timer)
    }
  }, [])
}

function hasFocus(): boolean {
  return document.activeElement !== null && document.activeElement !== document.body
}

function isUsable(element: HTMLElement): boolean {
  return (
    element.isConnected &&
    !element.matches(':disabled, [inert] *, [aria-hidden="true"], [aria-hidden="true"] *') &&
    element.getClientRects().length > 0
  )
}

function standingOf(element: Element): Standing | undefined {
  const row = element.closest('li, tr')
  const list = row?.parentElement
  return row === null || !list ? undefined : { list, at: [...list.children].indexOf(row) }
}

function neighbour(standing: Standing | undefined): HTMLElement | undefined {
  if (standing === undefined || !standing.list.isConnected) return undefined
  const rows = [...standing.list.children]
  const row = rows[Math.min(standing.at, rows.length - 1)]
  return [...(row?.querySelectorAll<HTMLElement>(FOCUSABLE) ?? [])].find(isUsable)
}
