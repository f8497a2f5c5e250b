import { runChecks } from './test/checks.ts'
import { stepTable } from './test/table.ts'

// npm run check: what can be said about the code without running it, in a few seconds.

const ends = await runChecks(({ name, failed, output }) => {
  if (failed > 0) process.stdout.write(`\n--- ${name}\n${output.trimEnd()}\n\n`)
})
process.stdout.write(`${stepTable(ends)}\n`)
process.exitCode = ends.some(({ failed }) => failed > 0) ? 1 : 0
