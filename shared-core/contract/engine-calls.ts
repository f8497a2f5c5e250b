import { z } from 'zod'
import { query } from './call.ts'
import { designBody } from './design-calls.ts'
import * as s from './schemas.ts'

const range = z.strictObject({
  value: z.number(),
  low: z.number(),
  high: z.number(),
  basis: s.basis,
})
const thread = z.strictObject({ inPieceMm: range, cutMm: z.array(z.number()), spoolMm: range })
const warning = z.strictObject({
  code: z.string(),
  severity: z.enum(['note', 'warning', 'impossible']),
  message: z.string(),
  next: z.string(),
  beads: z.array(z.number().int()),
})

/** Calls that need no database: a design in, all that the core reads from it out. */
export const engineCalls = {
  'engine.read': query({
    summary:
      'Reads a design: counts, mass, thread, size, passes, hole fill, steps, word chart, time, warnings.',
    input: z.strictObject({ body: designBody }),
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
          warnings: z.array(warning),
          labourS: range,
        }),
      ),
      warnings: z.array(warning.extend({ partId: z.string() })),
    }),
    reads: [],
  }),
} as const
