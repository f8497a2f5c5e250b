import { BrowserWindow, nativeTheme } from 'electron'

import { appOrigin } from './app-scheme.ts'
import { keepWindowState, readWindowState } from './window-state.ts'

const smallest = { width: 900, height: 600 }
/** The page's own grounds, so that nothing flashes before the first paint. */
const grounds = { light: '#f6f3ec', dark: '#131b22' }

/** Opens the studio's window and shows it once it has something to show. */
export function openStudioWindow(preload: string, icon: string | undefined): BrowserWindow {
  const state = readWindowState()
  nativeTheme.themeSource = state.theme
  const window = new BrowserWindow({
    ...state.bounds,
    minWidth: smallest.width,
    minHeight: smallest.height,
    show: false,
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
  window.once('ready-to-show', () => {
    if (state.maximised) window.maximize()
    window.show()
  })
  window.on('close', () => keepWindowState(window, nativeTheme.themeSource))
  void window.loadURL(`${appOrigin}/index.html`)
  return window
}
