import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { buildStudio } from '../../scripts/build.ts'
import { openDisplay } from '../../scripts/display.ts'
import { electronFlags, repo } from '../../scripts/runtime.ts'
import { measureStart, type Start } from './measure-start.ts'
import { medianOf, type Row } from './row.ts'

export const name = 'Start and memory beside a blank window'

const rounds = 31
const target = 1.3

/** The studio and a blank window by turns in one run, after one start of each that is not counted. */
export async function run(): Promise<Row[]> {
  await buildStudio()
  const display = await openDisplay()
  const scratch = mkdtempSync(join(tmpdir(), 'tallystrand-bench-'))
  const start = (app: string, user: string) =>
    measureStart([...electronFlags(), app, `--user-data-dir=${join(scratch, user)}`], display.name)
  const blank: Start[] = []
  const studio: Start[] = []
  try {
    for (let round = 0; round <= rounds; round++) {
      const one = await start(join(repo, 'scripts', 'blank-app'), 'blank')
      const other = await start(repo, 'studio')
      if (round > 0) {
        blank.push(one)
        studio.push(other)
      }
    }
  } finally {
    display.close()
    rmSync(scratch, { recursive: true, force: true })
  }
  return [
    ...rowsOf('blank window', blank, {}),
    ...rowsOf('studio', studio, { against: 'blank window' }),
  ]
}

function rowsOf(
  what: string,
  starts: readonly Start[],
  { against }: Readonly<{ against?: string }>,
): Row[] {
  const row = (aspect: string, figures: Pick<Row, 'unit' | 'median' | 'low' | 'high'>): Row => ({
    measure: `${what}: ${aspect}`,
    n: starts.length,
    ...figures,
    ...(against === undefined ? {} : { baseline: `${against}: ${aspect}`, target }),
  })
  return [
    row('start to interactive', medianOf(starts.map(({ interactiveMs }) => interactiveMs))),
    row(
      'memory (PSS)',
      medianOf(
        starts.map(({ memoryMiB }) => memoryMiB),
        'MiB',
      ),
    ),
  ]
}
