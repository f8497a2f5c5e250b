import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { runTool } from '../run-tool.ts'
import { repo } from '../runtime.ts'
import type { StepEnd } from './step.ts'

const report = join(repo, 'test-output', 'vitest.json')

/** Unit, property and store tests on plain Node, with coverage. */
export async function runUnitTests(): Promise<StepEnd> {
  rmSync(report, { force: true })
  const { code, seconds } = await runTool(
    'vitest',
    ['run', '--coverage', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    // Painted in colours wherever it sees a CI, unless told otherwise.
    { show: true, env: process.stdout.isTTY ? {} : { NO_COLOR: '1' } },
  )
  const { passed, failed } = countVitest()
  // A run that ends badly without a failed test, such as one that never began, is a failure too.
  return {
    name: 'unit and store tests (vitest)',
    seconds,
    passed,
    failed: code !== 0 && failed === 0 ? 1 : failed,
    // Shown already as it came.
    output: '',
  }
}

function countVitest(): Readonly<{ passed: number; failed: number }> {
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8'))
    return { passed: numPassedTests, failed: numFailedTests }
  } catch {
    return { passed: 0, failed: 0 }
  }
}
