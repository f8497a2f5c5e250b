import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { type ReaderMap, readerMap } from '../../../shared-core/bench/reader-place.ts'
import type { ReaderLine, ReaderScript } from '../../../shared-core/bench/reader-script.ts'
import { slotRuns } from '../../../shared-core/bench/reader-script.ts'
import { writeScript } from '../../../shared-core/bench/write-script.ts'
import { slotLabel } from '../../../shared-core/chart/chart.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'

/** The script of a design that must not be refused. */
export function script(body: DesignBody): ReaderScript {
  const written = writeScript(body, referenceTables)
  if (!written.ok) throw new Error(`${written.error.code}: ${written.error.message}`)
  return written.value
}

/** The same, laid out for some units. */
export function mapOf(body: DesignBody, units = 1): ReaderMap {
  return readerMap(script(body), units)
}

/** A line in short: `row 3 right 1A 2B | 1 2 2`. */
export function lineText({ kind, rows, side, steps }: ReaderLine): string {
  const beads = slotRuns(steps.flatMap(({ slots }) => slots))
    .map(({ slot, count }) => `${count}${slotLabel(slot)}`)
    .join(' ')
  const bridges = steps.flatMap((step) => step.bridges.map(({ place }) => place)).join(' ')
  const head = [kind, rows.join('+'), side, beads].filter(
    (part) => part !== undefined && part !== '',
  )
  return `${head.join(' ')}${bridges === '' ? '' : ` | ${bridges}`}`
}
