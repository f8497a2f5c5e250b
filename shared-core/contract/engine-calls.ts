import { z } from 'zod'
import { countedWeighing, ownTables } from './bead-tables-schema.ts'
import { query } from './call.ts'
import { designBody } from './design-calls.ts'
import { cullRates, engineBeadCalls, pace } from './engine-bead-calls.ts'
import { engineChartCalls } from './engine-chart-calls.ts'
import { engineColourCalls } from './engine-colour-calls.ts'
import * as s from './schemas.ts'

const range = z.strictObject({
  value: z.number(),
  low: z.number(),
  high: z.number(),
  basis: s.basis,
})
const thread = z.strictObject({
  inPieceMm: range,
  cutMm: z.array(z.number()),
  /** What of each length stays in the work. */
  inWorkMm: z.array(z.number()),
  spoolMm: range,
})
const warning = z.strictObject({
  code: z.string(),
  severity: z.enum(['note', 'warning', 'impossible']),
  message: z.string(),
  next: z.string(),
  beads: z.array(z.number().int()),
})

/** Calls that need no database: a design in, all that the core reads from it out. */
export const engineCalls = {
  ...engineBeadCalls,
  ...engineChartCalls,
  ...engineColourCalls,
  'engine.read': query({
    summary:
      'Reads a design: counts, mass, thread, size, passes, hole fill, steps, word chart, time, warnings.',
    input: z.strictObject({
      body: designBody,
      tables: ownTables.exactOptional(),
      /** Weighings of counted beads by slot letter; the table's figures serve for the rest. */
      weighings: z.record(z.string().max(4), z.array(countedWeighing).max(10_000)).exactOptional(),
      /** What a workshop has learnt of itself, as `workshop.pace` gives it; the tables' figures where it is left out. */
      pace: pace.exactOptional(),
      cullRates: cullRates.exactOptional(),
      threadUse: s.spread.exactOptional(),
    }),
    output: z.strictObject({
      beads: z.number().int(),
      counts: z.array(
        z.strictObject({
          label: z.string(),
          count: z.number().int(),
          massMg: range,
          needMg: range,
        }),
      ),
      thread,
      widthMm: range,
      heightMm: range,
      unitMassMg: range,
      labour: z.strictObject({
        setUpS: range,
        stitchingS: range,
        finishingS: range,
        totalS: range,
      }),
      parts: z.array(
        z.strictObject({
          partId: z.string(),
          beads: z.number().int(),
          widthMm: range,
          heightMm: range,
          events: z.array(z.looseObject({ kind: z.string() })),
          steps: z.array(
            z.strictObject({
              row: z.number().int(),
              text: z.string(),
              fromEvent: z.number().int(),
              toEvent: z.number().int(),
            }),
          ),
          words: z.array(z.string()),
          thread,
          passes: z.array(z.number().int()),
          fill: z.array(z.number().int()),
          /** Passes each bead's hole holds. */
          holds: z.array(z.number().int()),
          /** Events whose pass finds a hole full, in order of work. */
          sticks: z.array(z.strictObject({ event: z.number().int(), bead: z.number().int() })),
          warnings: z.array(warning),
          labourS: range,
        }),
      ),
      warnings: z.array(warning.extend({ partId: z.string() })),
    }),
    reads: [],
  }),
} as const
