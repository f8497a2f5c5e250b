import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { runTool } from '../run-tool.ts'
import { repo } from '../runtime.ts'
import type { StepEnd } from './step.ts'

// The packed app, which is what people get, goes through every test. Run from the sources it goes through
// those in which the two differ: the start, the shell, the files and processes, and one whole way from
// the chart to the shelf; the pages of the rooms are the same files in both.
const testsOf = { packaged: [], unpackaged: ['first-run', 'journey', 'shell-'] } as const

/** End-to-end tests in the real app, as it is run from the sources or as it is packed. */
export async function runAppTests(app: 'unpackaged' | 'packaged'): Promise<StepEnd> {
  const report = join(repo, 'test-output', `playwright-${app}.json`)
  rmSync(report, { force: true })
  const { code, seconds } = await runTool(
    'playwright',
    ['test', '--reporter=list,json', ...testsOf[app]],
    {
      env: { TALLYSTRAND_APP: app, PLAYWRIGHT_JSON_OUTPUT_NAME: report, PLAYWRIGHT_FORCE_TTY: '0' },
      show: true,
    },
  )
  const { passed, failed } = countPlaywright(report)
  return {
    name: `end-to-end tests (playwright, ${app} app)`,
    seconds,
    passed,
    failed: code !== 0 && failed === 0 ? 1 : failed,
    // Shown already as it came.
    output: '',
  }
}

function countPlaywright(report: string): Readonly<{ passed: number; failed: number }> {
  try {
    const { stats } = JSON.parse(readFileSync(report, 'utf8'))
    return { passed: stats.expected, failed: stats.unexpected + stats.flaky }
  } catch {
    return { passed: 0, failed: 0 }
  }
}
