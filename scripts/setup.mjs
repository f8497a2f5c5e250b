// Sets up whatever is missing; safe to run again and twice at once. Runs on Node 20 or later and
// needs no package: it is what installs them.
import { pathToFileURL } from 'node:url'

import { installNodeModules, nodeModulesAreReady } from './setup/node-modules.mjs'
import { oneAtATime } from './setup/one-at-a-time.mjs'
import { say } from './setup/say.mjs'
import { SetUpFailure } from './setup/set-up-failure.mjs'
import { installSystemPackages, missingSystemPackages } from './setup/system-libraries.mjs'

/**
 * Brings the clone into working order.
 *
 * `nodeOnly` stops after the Node packages, which is enough for everything without a window;
 * `retry` asks Electron's own host again after the fallback runtime was chosen.
 */
export async function setUp({ nodeOnly = false, retry = false } = {}) {
  if (!retry && (await isReady(nodeOnly))) return
  await oneAtATime(async () => {
    if (!nodeModulesAreReady()) await installNodeModules()
    if (nodeOnly) return
    await installSystemPackages(missingSystemPackages())
    const { provideRuntime, runtimeIsReady } = await import('./setup/electron-runtime.mjs')
    if (retry || !runtimeIsReady()) await provideRuntime({ retry })
  })
}

async function isReady(nodeOnly) {
  if (!nodeModulesAreReady()) return false
  if (nodeOnly) return true
  if (missingSystemPackages().length > 0) return false
  const { runtimeIsReady } = await import('./setup/electron-runtime.mjs')
  return runtimeIsReady()
}

/** Runs `setUp` and ends the process with a plain sentence where it cannot go on. */
export async function setUpOrStop(options) {
  try {
    await setUp(options)
  } catch (cause) {
    say(cause instanceof SetUpFailure ? cause.message : String(cause?.stack ?? cause))
    process.exit(1)
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await setUpOrStop({ retry: process.argv.includes('--retry') })
  const { readRuntime } = await import('./setup/electron-runtime.mjs')
  const runtime = readRuntime()
  say(`ready: Electron ${runtime.version} (${runtime.kind}) at ${runtime.executable}`)
}
