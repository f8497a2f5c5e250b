import { contextBridge, ipcRenderer } from 'electron'

import type { Bridge, ServiceState } from '../../shared-core/contract/bridge.ts'
import type { ShellCommand } from '../../shared-core/contract/shell-commands.ts'
import { refuse } from './refuse.ts'
import { openServiceLine } from './service-line.ts'

// Written in by the build from the two tables of the contract.
declare const __CALL_NAMES__: readonly string[]
declare const __SHELL_CALL_NAMES__: readonly string[]

const callNames = new Set(__CALL_NAMES__)
const shellCallNames = new Set(__SHELL_CALL_NAMES__)
const line = openServiceLine()
const serviceListeners = new Set<(state: ServiceState) => void>()
const commandListeners = new Set<(command: ShellCommand) => void>()

const bridge = {
  request: async (name: unknown, input: unknown) =>
    typeof name === 'string' && callNames.has(name)
      ? line.request(name, input)
      : refuse('unknown-call', 'There is no call of that name.', 'Use a call of the contract.'),
  shell: async (name: unknown, input: unknown) =>
    typeof name === 'string' && shellCallNames.has(name)
      ? ipcRenderer.invoke('shell-call', name, input)
      : refuse('unknown-call', 'There is no call of that name.', 'Use a call of the shell.'),
  onCommand: (listener: (command: ShellCommand) => void) => listen(commandListeners, listener),
  onService: (listener: (state: ServiceState) => void) => listen(serviceListeners, listener),
  sayInteractive: () => ipcRenderer.send('interactive'),
} as Bridge

ipcRenderer.on('service-port', ({ ports: [port] }) => {
  if (port !== undefined) line.use(port)
})
ipcRenderer.on('service-state', (_event, state: ServiceState) => {
  if (state === 'stopped') line.cut()
  for (const listener of serviceListeners) listener(state)
})
ipcRenderer.on('command', (_event, command: ShellCommand) => {
  for (const listener of commandListeners) listener(command)
})
ipcRenderer.send('want-service')
contextBridge.exposeInMainWorld('tallystrand', bridge)

function listen<T>(listeners: Set<T>, listener: T): () => void {
  listeners.add(listener)
  return () => {
    listeners.delete(listener)
  }
}
