import { readFileSync } from 'node:fs'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import { readGridFile } from '../../../shared-core/chart/read-grid-file.ts'

/** A chart of the sample files. */
export const sample = (name: string): Chart => {
  const text = readFileSync(new URL(`../../fixtures/samples/${name}`, import.meta.url), 'utf8')
  const outcome = readGridFile(text, { fileName: name })
  if (!outcome.ok) throw new Error(name)
  return outcome.value.chart
}
