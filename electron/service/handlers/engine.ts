import { bestCalibration, type Calibration } from '../../../shared-core/beads/calibration.ts'
import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import type { CallOutput, ParsedInput } from '../../../shared-core/contract/calls.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import type { PartReading } from '../../../shared-core/design/reading.ts'
import { findSticks } from '../../../shared-core/route/read-fill.ts'
import { Refused } from '../refused.ts'
import { checkedWeighings } from './engine-beads.ts'
import { checkedLearned } from './engine-learned.ts'
import { formIn, tablesWith } from './engine-tables.ts'
import type { PureHandler } from './handler.ts'

type Output = CallOutput<'engine.read'>
type Input = ParsedInput<'engine.read'>

export const readEngine: PureHandler<'engine.read'> = (input) => {
  const { body } = input
  const tables = tablesWith(input.tables)
  const calibrations = calibrationsOf(input, tables)
  const read = readDesign(body, { ...tables, calibrations, ...checkedLearned(input) })
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

/** The weighings sent for some slots, pooled by the form the palette gives each. */
function calibrationsOf({ body, weighings = {} }: Input, tables: BeadTables) {
  const calibrations: Record<string, Calibration> = {}
  for (const { label, formId } of body.palette) {
    const sent = weighings[label]
    if (sent === undefined) continue
    const form = formIn(tables, formId, 'body.palette')
    calibrations[label] = bestCalibration(form, checkedWeighings(sent, form, `weighings.${label}`))
  }
  return calibrations
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
    holds: Array.from(part.holds),
    sticks: findSticks(part.route, part.holds),
    warnings: part.warnings,
    labourS: part.labourS,
  }
}
