import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import type { PartReading } from '../../../shared-core/design/reading.ts'
import { Refused } from '../refused.ts'
import type { PureHandler } from './handler.ts'

type Output = CallOutput<'engine.read'>

export const readEngine: PureHandler<'engine.read'> = ({ body }) => {
  const read = readDesign(body, referenceTables)
  if (!read.ok) {
    const { field } = read.error
    throw new Refused({
      ...read.error,
      ...(field === undefined ? {} : { field: `body.${field}` }),
    })
  }
  const { beads, counts, thread, widthMm, heightMm, unitMassMg, labour, parts, warnings } =
    read.value
  // The reading's lists are never changed on their way out; the contract's types only allow it.
  return {
    beads,
    counts,
    thread,
    widthMm,
    heightMm,
    unitMassMg,
    labour,
    parts: parts.map(toPart),
    warnings,
  } as unknown as Output
}

/** A part as plain JSON: typed arrays become lists, what is written out on demand is written out. */
function toPart(part: PartReading) {
  return {
    partId: part.partId,
    beads: part.beads,
    widthMm: part.widthMm,
    heightMm: part.heightMm,
    events: part.events,
    steps: part.steps,
    words: part.words,
    thread: part.thread,
    passes: Array.from(part.passes),
    fill: Array.from(part.fill),
    warnings: part.warnings,
    labourS: part.labourS,
  }
}
