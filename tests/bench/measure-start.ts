import { type ChildProcess, spawn } from 'node:child_process'
import { setTimeout as pause } from 'node:timers/promises'

import { electronEnv, readRuntime } from '../../scripts/runtime.ts'
import { proportionalMemoryMiB } from './proportional-memory.ts'

/** What one start took: time until the first screen takes input, and memory once it is quiet. */
export type Start = Readonly<{ interactiveMs: number; memoryMiB: number }>

const settlesInMs = 2_000
const startLimitMs = 60_000

/** Starts Electron with these arguments, waits for its word that it is interactive, and ends it. */
export async function measureStart(
  args: readonly string[],
  display: string | undefined,
): Promise<Start> {
  const start = performance.now()
  const app = spawn(readRuntime().executable, args, {
    stdio: ['ignore', 'pipe', 'ignore'],
    env: { ...electronEnv(display), TALLYSTRAND_SAY_WHEN_READY: '1' },
  })
  try {
    await sayingInteractive(app)
    const interactiveMs = performance.now() - start
    await pause(settlesInMs)
    return { interactiveMs, memoryMiB: proportionalMemoryMiB(app.pid ?? 0) }
  } finally {
    await end(app)
  }
}

function sayingInteractive(app: ChildProcess): Promise<void> {
  return new Promise((resolve, reject) => {
    const tooLong = setTimeout(
      () => reject(new Error(`No word of being interactive within ${startLimitMs} ms.`)),
      startLimitMs,
    )
    app.once('exit', (code) =>
      reject(new Error(`It ended with ${code} before it was interactive.`)),
    )
    app.stdout?.on('data', (chunk) => {
      if (!String(chunk).includes('interactive')) return
      clearTimeout(tooLong)
      resolve()
    })
  })
}

/** Killed outright: what is measured is over, and its folder is thrown away. */
async function end(app: ChildProcess): Promise<void> {
  if (app.exitCode !== null) return
  const gone = new Promise((resolve) => app.once('exit', resolve))
  app.kill('SIGKILL')
  await gone
  // The children notice by their closed pipes.
  await pause(300)
}
