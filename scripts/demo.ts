import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'

import type { Finding } from '../tests/e2e/journey/finding.ts'
import { agrees, findingLine } from '../tests/e2e/journey/finding.ts'
import { closeAndReopen, journey } from '../tests/e2e/journey.ts'
import { openStudio, type Studio } from '../tests/e2e/studio.ts'
import { buildStudio } from './build.ts'
import { setWindow } from './demo/set-window.ts'
import { numbered, pictureName } from './demo/step-names.ts'
import { openDisplay } from './display.ts'
import { readRuntime, repo } from './runtime.ts'

// npm run demo: one order from the chart to the shelf in the real app, on a workshop of its own and a
// display of its own. Every figure on the screen is held against what the core computes from the same
// files and what the store keeps; any difference ends it with 1.

const folder = join(repo, 'demo-output')
rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })
process.chdir(repo)

const { kind, version } = readRuntime()
await buildStudio()
const display = await openDisplay({ virtual: process.platform === 'linux' })
if (display.name !== undefined) process.env['DISPLAY'] = display.name
say(`Tallystrand on Electron ${version} (${kind}), in ${folder}`)

const userDataDir = join(folder, 'workshop')
let studio = await open()
const differing: Finding[] = []
try {
  for (const [at, { title, go }] of journey.entries()) {
    tell(numbered(at, title), await go(studio, folder))
    await studio.page.screenshot({ path: join(folder, pictureName(at, title)) })
  }
  const last = [journey.length, 'Close and open again'] as const
  const again = await closeAndReopen(studio, open)
  studio = again.studio
  tell(numbered(...last), again.findings)
  await studio.page.screenshot({ path: join(folder, pictureName(...last)) })
} catch (cause) {
  await studio.page.screenshot({ path: join(folder, 'stopped-here.png') }).catch(() => undefined)
  throw cause
} finally {
  await studio.close()
  display.close()
}

say('')
if (differing.length === 0) say('The screen, the core and the store agree on every figure.')
else say(`${differing.length} figures differ:\n${differing.map(findingLine).join('\n')}`)
say(`Pictures, tags and the workshop itself: ${folder}`)
process.exitCode = differing.length === 0 ? 0 : 1

async function open(): Promise<Studio> {
  const opened = await openStudio({ userDataDir })
  await setWindow(opened)
  return opened
}

function tell(title: string, findings: readonly Finding[]): void {
  say(`\n${title}`)
  for (const finding of findings) {
    say(`  ${findingLine(finding)}`)
    if (!agrees(finding)) differing.push(finding)
  }
}

function say(line: string): void {
  process.stdout.write(`${line}\n`)
}
