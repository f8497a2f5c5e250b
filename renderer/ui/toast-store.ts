/** A short word on what was just done, with a way back where there is one. */
export type Toast = Readonly<{
  id: number
  text: string
  /** `undo` while the act can be taken back from here. */
  action?: Readonly<{ label: string; run: () => void }> | undefined
  tone: 'done' | 'refused'
  /** It tells of a step of the history. Only the latest can be taken back, so a newer one replaces it. */
  isStep?: true
}>

/** Long enough to read and to reach the button; a refused act stays until it is closed. */
const STAYS_MS = 10_000
const MOST_AT_ONCE = 3

let toasts: readonly Toast[] = []
let lastId = 0
let isHeld = false
const overdue = new Set<number>()
const listeners = new Set<() => void>()

function set(next: readonly Toast[]): void {
  toasts = next
  for (const listener of listeners) listener()
}

/** What is on show now, oldest first. */
export function readToasts(): readonly Toast[] {
  return toasts
}

/** Calls back at every change; gives the function that stops it. */
export function onToasts(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** Shows a toast and gives its id. */
export function showToast(
  toast: Omit<Toast, 'id' | 'tone'> & Partial<Pick<Toast, 'tone'>>,
): number {
  lastId += 1
  const id = lastId
  const others = toast.isStep === true ? toasts.filter(({ isStep }) => isStep !== true) : toasts
  set([...others, { tone: 'done', ...toast, id } as const].slice(-MOST_AT_ONCE))
  if (toast.tone !== 'refused') setTimeout(() => endTime(id), STAYS_MS)
  return id
}

/** While the pointer or the focus rests on them no toast goes by itself. */
export function holdToasts(held: boolean): void {
  isHeld = held && toasts.length > 0
  if (isHeld) return
  for (const id of overdue) closeToast(id)
  overdue.clear()
}

function endTime(id: number): void {
  if (isHeld) overdue.add(id)
  else closeToast(id)
}

/** Puts a toast away; nothing happens when it is gone already. */
export function closeToast(id: number): void {
  if (toasts.some((toast) => toast.id === id)) set(toasts.filter((toast) => toast.id !== id))
  // What was under the pointer or had the focus is gone, and nothing will say so.
  if (toasts.length === 0) isHeld = false
}
