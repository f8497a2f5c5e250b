import { join } from 'node:path'

import { app, type BrowserWindow } from 'electron'

import { serveAppScheme } from './app-scheme.ts'
import { askWithButtons } from './dialogs.ts'
import { lockDown } from './lock-down.ts'
import { log } from './log.ts'
import { setMenu } from './menu.ts'
import { listenToPage, sendCommand, sendServicePort, sendServiceState } from './page-channel.ts'
import { startService } from './service-process.ts'
import { openStudioWindow } from './studio-window.ts'
import { dataFile } from './user-data.ts'

const startAgain = 0

/** The life of the studio: one window, one service, and what happens when either goes away. */
export function runStudio(dist: string): void {
  // First of all, so that another core starts on the data while this one makes the window.
  let service = openService()
  lockDown()
  serveAppScheme(join(dist, 'renderer'))
  const { window, show } = openStudioWindow(
    join(dist, 'preload', 'preload.cjs'),
    join(dist, 'icon.png'),
  )

  listenToPage({
    wantsService: () => sendServicePort(window, service.connect()),
    isInteractive: () => {
      show()
      sayInteractive()
      setMenu((command) => sendCommand(window, command))
    },
    // Loaded with the first call, to keep the schemas out of the start.
    shellCall: async (name, input) =>
      (await import('./shell-calls.ts')).answerShellCall(name, input, window),
    strangerRefused: (channel) => log(`refused a sender that is not our page on ${channel}`),
  })
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason !== 'clean-exit') void offerPageAgain(window, reason)
  })
  app.on('second-instance', () => bringForward(window))
  app.on('window-all-closed', () => app.quit())
  app.on('will-quit', (event) => {
    event.preventDefault()
    void service.close().finally(() => app.exit(0))
  })

  function openService() {
    return startService({
      file: dataFile(),
      compiledFolder: join(app.getPath('userData'), 'compiled'),
      onLost: (code) => void offerServiceAgain(code),
      onOutput: (text) => log(`service: ${text.trimEnd()}`),
    })
  }

  async function offerServiceAgain(code: number): Promise<void> {
    log(`the service stopped with ${code}`)
    if (window.isDestroyed()) return
    sendServiceState(window, 'stopped')
    const pressed = await askWithButtons(window, {
      type: 'warning',
      message: 'The part of the studio that keeps your data has stopped.',
      detail: 'What was saved before is safe; the last step may be missing. Start it again?',
      buttons: ['Start again', 'Close the studio'],
      defaultId: startAgain,
      cancelId: startAgain,
    })
    if (pressed !== startAgain) return app.quit()
    service = openService()
    if (window.isDestroyed()) return
    sendServicePort(window, service.connect())
    sendServiceState(window, 'running')
  }
}

async function offerPageAgain(window: BrowserWindow, reason: string): Promise<void> {
  log(`the page stopped: ${reason}`)
  const pressed = await askWithButtons(window, {
    type: 'warning',
    message: 'The studio’s window has stopped.',
    detail: 'What was saved before is safe. Open it again?',
    buttons: ['Open again', 'Close the studio'],
    defaultId: startAgain,
    cancelId: startAgain,
  })
  if (pressed === startAgain) window.webContents.reload()
  else app.quit()
}

function bringForward(window: BrowserWindow): void {
  if (window.isMinimized()) window.restore()
  window.show()
  window.focus()
}

/** One line for whoever measures the start; silent otherwise. */
function sayInteractive(): void {
  if (process.env['TALLYSTRAND_SAY_WHEN_READY'] !== undefined) process.stdout.write('interactive\n')
}
