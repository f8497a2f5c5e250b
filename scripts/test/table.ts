import type { StepEnd } from './step.ts'

/** The steps of a run as lines of a table: name, time, what passed and failed. */
export function stepTable(ends: readonly StepEnd[]): string {
  const width = Math.max(...ends.map(({ name }) => name.length))
  return ends
    .map(({ name, seconds, passed, failed }) => {
      const tests = passed + failed > 0 ? `${passed} passed, ${failed} failed` : 'in order'
      return `${name.padEnd(width)}  ${seconds.toFixed(1).padStart(6)} s  ${tests}`
    })
    .join('\n')
}
