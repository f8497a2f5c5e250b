import { readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

import { app, type BrowserWindow, type Rectangle, screen } from 'electron'

export type Theme = 'light' | 'dark' | 'system'

export type WindowState = Readonly<{
  bounds: Readonly<Partial<Rectangle> & { width: number; height: number }>
  maximised: boolean
  theme: Theme
}>

const firstState: WindowState = {
  bounds: { width: 1280, height: 820 },
  maximised: false,
  theme: 'system',
}

/** Where the window stood last time, if that place is still on a screen. */
export function readWindowState(): WindowState {
  const stored = readStored()
  if (stored === undefined) return firstState
  return isOnAScreen(stored.bounds) ? stored : { ...stored, bounds: firstState.bounds }
}

/** Keeps where the window stands; a failure to write costs nothing but the place. */
export function keepWindowState(window: BrowserWindow, theme: Theme): void {
  const state: WindowState = {
    bounds: window.getNormalBounds(),
    maximised: window.isMaximized(),
    theme,
  }
  try {
    const draft = `${stateFile()}.new`
    writeFileSync(draft, JSON.stringify(state))
    renameSync(draft, stateFile())
  } catch {
    // The folder may be read-only; the next start opens at the usual place.
  }
}

function stateFile(): string {
  return join(app.getPath('userData'), 'window.json')
}

function readStored(): WindowState | undefined {
  try {
    const state: unknown = JSON.parse(readFileSync(stateFile(), 'utf8'))
    return isWindowState(state) ? state : undefined
  } catch {
    return undefined
  }
}

function isWindowState(value: unknown): value is WindowState {
  const state = value as WindowState | null
  const bounds = state?.bounds
  return (
    typeof state?.maximised === 'boolean' &&
    ['light', 'dark', 'system'].includes(state.theme) &&
    [bounds?.x, bounds?.y, bounds?.width, bounds?.height].every(Number.isInteger)
  )
}

function isOnAScreen({ x = 0, y = 0, width }: WindowState['bounds']): boolean {
  return screen.getAllDisplays().some(({ workArea }) => {
    const left = Math.max(x, workArea.x)
    const right = Math.min(x + width, workArea.x + workArea.width)
    const titleIsInside = y >= workArea.y && y < workArea.y + workArea.height
    return right - left >= 100 && titleIsInside
  })
}
