import { join } from 'node:path'

import {
  MessageChannelMain,
  type MessagePortMain,
  type UtilityProcess,
  utilityProcess,
} from 'electron'

const closingTakesAtMostMs = 3_000

type ServiceProcess = Readonly<{
  /** The page's end of a new line to the service. */
  connect: () => MessagePortMain
  /** Asks the service to close its files; resolves when it is gone, or has been ended. */
  close: () => Promise<void>
}>

type Settings = Readonly<{
  file: string
  /** Where the service may keep its compiled code. */
  compiledFolder: string
  onLost: (code: number) => void
  onOutput: (text: string) => void
}>

/** Starts the process that keeps the data. It opens `file` at once, before anyone asks. */
export function startService({ file, compiledFolder, onLost, onOutput }: Settings): ServiceProcess {
  const entry = join(import.meta.dirname, '..', 'service-entry', 'main.cjs')
  const child = utilityProcess.fork(entry, [file, compiledFolder], {
    serviceName: 'Tallystrand data',
    stdio: 'pipe',
  })
  let closing = false
  child.stdout?.on('data', (chunk) => onOutput(String(chunk)))
  child.stderr?.on('data', (chunk) => onOutput(String(chunk)))
  child.on('exit', (code) => {
    if (!closing) onLost(code)
  })
  return {
    connect: () => connectTo(child),
    close: () => {
      closing = true
      return closeAndWait(child)
    },
  }
}

function connectTo(child: UtilityProcess): MessagePortMain {
  const { port1, port2 } = new MessageChannelMain()
  child.postMessage({ kind: 'connect' }, [port1])
  return port2
}

function closeAndWait(child: UtilityProcess): Promise<void> {
  if (child.pid === undefined) return Promise.resolve()
  return new Promise((resolve) => {
    const tooLate = setTimeout(() => child.kill(), closingTakesAtMostMs)
    child.once('exit', () => {
      clearTimeout(tooLate)
      resolve()
    })
    child.postMessage({ kind: 'close' })
  })
}
