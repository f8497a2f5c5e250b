import { BrowserWindow, nativeTheme } from 'electron'

import { appOrigin } from './app-scheme.ts'
import { keepWindowState, readWindowState } from './window-state.ts'

const smallest = { width: 900, height: 600 }
/** The page's own grounds, so that nothing flashes before the first paint. */
const grounds = { light: '#f6f3ec', dark: '#131b22' }

/** Whatever the page is waiting for, by then the window is there. */
const showsWithinMs = 1_500

type StudioWindow = Readonly<{
  window: BrowserWindow
  /** Shows the window, if it is not shown yet: with its first screen, instead of empty before. */
  show: () => void
}>

/** Opens the studio's window, not shown yet, and sends for its page. */
export function openStudioWindow(preload: string, icon: string | undefined): StudioWindow {
  const state = readWindowState()
  nativeTheme.themeSource = state.theme
  const window = new BrowserWindow({
    ...state.bounds,
    minWidth: smallest.width,
    minHeight: smallest.height,
    show: false,
    paintWhenInitiallyHidden: false,
    title: 'Tallystrand',
    backgroundColor: nativeTheme.shouldUseDarkColors ? grounds.dark : grounds.light,
    ...(icon === undefined ? {} : { icon }),
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webSecurity: true,
      spellcheck: false,
      navigateOnDragDrop: false,
    },
  })
  const show = () => {
    clearTimeout(atLatest)
    if (window.isDestroyed() || window.isVisible()) return
    if (state.maximised) window.maximize()
    window.show()
  }
  const atLatest = setTimeout(show, showsWithinMs)
  window.on('close', () => keepWindowState(window, nativeTheme.themeSource))
  void window.loadURL(`${appOrigin}/index.html`)
  return { window, show }
}
