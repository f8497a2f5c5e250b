import { buildStudio } from './build.ts'
import { makeTwinForTests } from './package/under-test.ts'
import { packageStudio } from './package.ts'
import { runAppTests } from './test/app-tests.ts'
import { runChecks } from './test/checks.ts'
import type { StepEnd } from './test/step.ts'
import { stepTable } from './test/table.ts'
import { runUnitTests } from './test/unit-tests.ts'

// npm test: every check and every test, each step once, whatever came of the one before it. The last
// line counts tests that passed, and tests and steps that failed.

const ends: StepEnd[] = []

heading('checks')
ends.push(...(await runChecks(tell)))
heading('unit and store tests')
ends.push(await runUnitTests())
heading('build')
ends.push(await timed('build', buildStudio))
heading('end-to-end tests in the unpackaged app')
ends.push(await runAppTests('unpackaged'))
heading('package')
ends.push(await timed('package', async () => makeTwinForTests(await packageStudio())))
heading('end-to-end tests in the packaged app')
ends.push(await runAppTests('packaged'))

const failures = ends.filter(({ output }) => output !== '')
for (const { name, output } of failures)
  process.stdout.write(`\n--- ${name}\n${output.trimEnd()}\n`)
heading('summary')
process.stdout.write(`${stepTable(ends)}\n`)
const sum = (count: (end: StepEnd) => number) => ends.reduce((total, end) => total + count(end), 0)
const failed = sum((end) => end.failed)
process.stdout.write(`${sum((end) => end.passed)} passed, ${failed} failed\n`)
process.exitCode = failed === 0 ? 0 : 1

function heading(text: string): void {
  process.stdout.write(`\n== ${text}\n`)
}

function tell({ name, seconds, failed }: StepEnd): void {
  process.stdout.write(`${failed === 0 ? 'ok' : 'FAILED'}  ${name} (${seconds.toFixed(1)} s)\n`)
}

/** A step that fails by throwing. */
async function timed(name: string, work: () => Promise<unknown>): Promise<StepEnd> {
  const start = performance.now()
  const seconds = () => (performance.now() - start) / 1000
  try {
    await work()
    const end = { name, seconds: seconds(), passed: 0, failed: 0, output: '' }
    tell(end)
    return end
  } catch (cause) {
    const output = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)
    return { name, seconds: seconds(), passed: 0, failed: 1, output }
  }
}
