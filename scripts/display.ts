import { spawn } from 'node:child_process'

type Display = Readonly<{
  /** As in the variable DISPLAY; undefined where the system needs none. */
  name: string | undefined
  isVirtual: boolean
  close: () => void
}>

const startLimitMs = 10_000

/** The display to open windows on: the one there is, or a virtual one where there is none. */
export function openDisplay({ virtual = false } = {}): Promise<Display> {
  const present = process.env['DISPLAY'] ?? process.env['WAYLAND_DISPLAY']
  const has = process.platform !== 'linux' || (present !== undefined && present !== '')
  if (has && !virtual) return Promise.resolve(noNewDisplay())
  return startVirtualDisplay()
}

function noNewDisplay(): Display {
  return { name: process.env['DISPLAY'], isVirtual: false, close: () => {} }
}

/** Xvfb chooses a free number itself and writes it to the fourth stream. */
function startVirtualDisplay(): Promise<Display> {
  const screen = ['-screen', '0', '1440x900x24', '-nolisten', 'tcp', '-noreset']
  const server = spawn('Xvfb', ['-displayfd', '3', ...screen], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  })
  return new Promise((resolve, reject) => {
    const tooLong = setTimeout(() => fail('did not come up'), startLimitMs)
    const fail = (why: string) => {
      clearTimeout(tooLong)
      server.kill()
      reject(new Error(`The virtual display (Xvfb) ${why}. Run \`npm run setup\`.`))
    }
    server.once('error', (cause) => fail(`did not start: ${cause.message}`))
    server.once('exit', (code) => fail(`ended with ${code}`))
    server.stdio[3]?.once('data', (number: Buffer) => {
      clearTimeout(tooLong)
      server.removeAllListeners('exit')
      server.unref()
      resolve({ name: `:${String(number).trim()}`, isVirtual: true, close: () => server.kill() })
    })
  })
}
