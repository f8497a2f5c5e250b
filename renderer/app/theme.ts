import { useSyncExternalStore } from 'react'
import { bridge } from './bridge.ts'

/** Paper by day, ink by lamplight, or as the system has it. */
export type Theme = 'light' | 'dark' | 'system'

const KEY = 'tallystrand.theme'
const listeners = new Set<() => void>()

/** The theme chosen on this machine; `system` until one is. */
export function readTheme(): Theme {
  const kept = localStorage.getItem(KEY)
  return kept === 'light' || kept === 'dark' ? kept : 'system'
}

/** Puts the kept theme on the page. Call once, before the first paint. */
export function applyTheme(): void {
  const theme = readTheme()
  if (theme === 'system') delete document.documentElement.dataset['theme']
  else document.documentElement.dataset['theme'] = theme
}

/** Changes the theme here, in the window's menus, and for the next start. */
export function chooseTheme(theme: Theme): void {
  localStorage.setItem(KEY, theme)
  applyTheme()
  void bridge.shell('window.setTheme', { theme })
  for (const listener of listeners) listener()
}

function listen(onChange: () => void): () => void {
  listeners.add(onChange)
  return () => listeners.delete(onChange)
}

/** The chosen theme, kept up to date. */
export function useTheme(): Theme {
  return useSyncExternalStore(listen, readTheme)
}
