import {
  type BrowserWindow,
  type IpcMainEvent,
  type IpcMainInvokeEvent,
  ipcMain,
  type MessagePortMain,
} from 'electron'

import type { ServiceState } from '../../shared-core/contract/bridge.ts'
import type { Answer } from '../../shared-core/contract/calls.ts'
import type { ShellCommand } from '../../shared-core/contract/shell-commands.ts'
import { appOrigin } from './app-scheme.ts'

// The one file that touches Electron's messages between the shell and the page.

type PageListeners = Readonly<{
  wantsService: () => void
  isInteractive: () => void
  shellCall: (name: unknown, input: unknown) => Promise<Answer<unknown>>
  strangerRefused: (channel: string) => void
}>

const notAllowed: Answer<never> = {
  ok: false,
  error: {
    code: 'not-allowed',
    message: 'Only the studio’s own page may ask the shell.',
    next: 'Close this window and start the studio again.',
  },
}

/** Listens to the studio's page, and to no other sender. */
export function listenToPage(listeners: PageListeners): void {
  const whenOurs = (channel: string, act: () => void) => (event: IpcMainEvent) => {
    if (isOurPage(event)) act()
    else listeners.strangerRefused(channel)
  }
  ipcMain.on('want-service', whenOurs('want-service', listeners.wantsService))
  ipcMain.on('interactive', whenOurs('interactive', listeners.isInteractive))
  ipcMain.handle('shell-call', (event, name: unknown, input: unknown) => {
    if (isOurPage(event)) return listeners.shellCall(name, input)
    listeners.strangerRefused('shell-call')
    return notAllowed
  })
}

export function sendCommand(window: BrowserWindow, command: ShellCommand): void {
  window.webContents.send('command', command)
}

export function sendServiceState(window: BrowserWindow, state: ServiceState): void {
  window.webContents.send('service-state', state)
}

/** Hands the page its end of the line to the service. */
export function sendServicePort(window: BrowserWindow, port: MessagePortMain): void {
  window.webContents.postMessage('service-port', null, [port])
}

function isOurPage({ senderFrame }: IpcMainEvent | IpcMainInvokeEvent): boolean {
  return (
    senderFrame !== null &&
    senderFrame.parent === null &&
    senderFrame.url.startsWith(`${appOrigin}/`)
  )
}
