import { spawn } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'

import { _electron } from '@playwright/test'

import { buildStudio } from './build.ts'
import { openDisplay } from './display.ts'
import { electronEnv, electronFlags, readRuntime, repo } from './runtime.ts'

// npm start: builds what changed and opens the studio. Without a display it opens on a virtual one
// and leaves a picture of the first screen; `-- --once` then closes it again.

const args = process.argv.slice(2)
const once = args.includes('--once')
const passedOn = args.filter((argument) => argument !== '--once')

const { kind, version, executable } = readRuntime()
await buildStudio()
const display = await openDisplay()
say(`opening the studio on Electron ${version} (${kind})`)
process.exitCode = display.isVirtual ? await openOutOfSight() : await openInSight()
display.close()

/** The usual way: this process waits until the window is closed. */
function openInSight(): Promise<number> {
  const studio = spawn(executable, [...electronFlags(), repo, ...passedOn], {
    stdio: 'inherit',
    env: electronEnv(display.name),
  })
  return new Promise((resolve, reject) => {
    studio.on('error', reject)
    studio.on('exit', (code) => resolve(code ?? 1))
  })
}

async function openOutOfSight(): Promise<number> {
  say(`there is no display here: using a virtual one (${display.name})`)
  const studio = await _electron.launch({
    executablePath: executable,
    args: [...electronFlags(), repo, ...passedOn],
    env: electronEnv(display.name),
  })
  // Closing goes through the studio's own way out, so that its files are closed properly.
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void studio.close())
  const page = await studio.firstWindow()
  await page.waitForLoadState('load')
  // Every screen has a heading; what is drawn beside it stands a moment later.
  await page.getByRole('heading', { level: 1 }).first().waitFor()
  await page.waitForTimeout(500)
  const picture = join(repo, 'test-output', 'first-screen.png')
  mkdirSync(join(repo, 'test-output'), { recursive: true })
  await page.screenshot({ path: picture })
  say(`a picture of the first screen: ${picture}`)
  if (once) await studio.close()
  else {
    say(
      'the studio is open and goes on until you press Ctrl+C; `npm start -- --once` closes it by itself',
    )
    await studio.waitForEvent('close', { timeout: 0 })
  }
  return 0
}

function say(line: string): void {
  process.stderr.write(`start: ${line}\n`)
}
