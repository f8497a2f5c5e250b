import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { _electron, type ElectronApplication, type Page } from '@playwright/test'
import { packagedUnderTest } from '../../scripts/package/under-test.ts'
import { electronEnv, electronFlags, readRuntime, repo } from '../../scripts/runtime.ts'
import type { Bridge } from '../../shared-core/contract/bridge.ts'

type Options = Readonly<{
  /** Kept across two openings when given; otherwise a scratch folder that `close` removes. */
  userDataDir?: string
  dbFile?: string
  /** Begin with the Saltmarsh sample through the contract, before the test looks at the page. */
  sample?: boolean
  env?: Readonly<Record<string, string>>
  args?: readonly string[]
}>

export type Studio = Readonly<{
  app: ElectronApplication
  page: Page
  userDataDir: string
  /** What the next dialogs answer, in order: a path, null for closed, or a button's number. */
  answerDialogs: (...answers: readonly (string | number | null)[]) => void
  /** Dialog answers that nobody has asked for yet. */
  unusedAnswers: () => readonly (string | number | null)[]
  close: () => Promise<void>
}>

/** Opens the studio in real Electron, with data of its own, unpackaged or packaged. */
export async function openStudio(options: Options = {}): Promise<Studio> {
  const scratch = mkdtempSync(join(tmpdir(), 'tallystrand-e2e-'))
  const userDataDir = options.userDataDir ?? join(scratch, 'user')
  const answers = join(scratch, 'dialog-answers.json')
  writeFileSync(answers, '[]')
  const app = await _electron.launch({
    ...whatToStart([
      ...(options.args ?? []),
      `--user-data-dir=${userDataDir}`,
      ...(options.dbFile === undefined ? [] : [`--db=${options.dbFile}`]),
    ]),
    env: {
      ...electronEnv(process.env['DISPLAY']),
      TALLYSTRAND_TEST_FILES: answers,
      ...options.env,
    },
  })
  const page = await app.firstWindow()
  await page.waitForLoadState('domcontentloaded')
  await keepFocus(page)
  if (options.sample === true) await beginWithSample(page)
  return {
    app,
    page,
    userDataDir,
    answerDialogs: (...next) => writeFileSync(answers, JSON.stringify(next)),
    unusedAnswers: () => JSON.parse(readFileSync(answers, 'utf8')),
    close: async () => {
      await app.close()
      rmSync(scratch, { recursive: true, force: true })
    },
  }
}

/** Painting by a made-up graphics processor takes a fifth of a test's time; the pixels are the same. */
const plainPainting = ['--disable-gpu', '--disable-software-rasterizer']

/** The program and its arguments, for tests that start the studio without Playwright too. */
export function whatToStart(args: readonly string[]): { executablePath: string; args: string[] } {
  if (process.env['TALLYSTRAND_APP'] === 'packaged') {
    return {
      executablePath: packagedUnderTest(),
      args: [...electronFlags(), ...plainPainting, ...args],
    }
  }
  return {
    executablePath: readRuntime().executable,
    args: [...electronFlags(), ...plainPainting, repo, ...args],
  }
}

/** Two studios on one display without a window manager: each page is told that it has the focus. */
async function keepFocus(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page)
  await session.send('Emulation.setFocusEmulationEnabled', { enabled: true })
}

async function beginWithSample(page: Page): Promise<void> {
  const answer = await page.evaluate(async () => {
    const now = new Date()
    const two = (n: number) => String(n).padStart(2, '0')
    const { tallystrand } = window as unknown as Readonly<{ tallystrand: Bridge }>
    return tallystrand.request('workshop.begin', {
      with: 'sample',
      name: 'Saltmarsh Beadworks',
      currency: 'EUR',
      decimalMark: ',',
      today: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    })
  })
  if (!answer.ok) throw new Error(`The sample was refused: ${JSON.stringify(answer.error)}`)
  await page.reload()
}
