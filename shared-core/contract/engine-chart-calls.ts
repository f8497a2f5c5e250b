import { z } from 'zod'
import { ownTables } from './bead-tables-schema.ts'
import { query } from './call.ts'
import { chartJson, stitch } from './design-calls.ts'
import * as s from './schemas.ts'

const beadsAcross = z.number().int().min(1).max(100_000)
const sizeMm = z.number().min(0.1).max(100_000)
const formId = z.string().max(60)
const threadId = z.string().max(60)
const tables = ownTables.exactOptional()

/** Charts: where beads lie, words, outlines; calls that need no database. */
export const engineChartCalls = {
  'engine.geometry': query({
    summary: 'Where the beads of a chart lie and touch: size, centres, neighbours, outline.',
    input: z.strictObject({
      chart: chartJson,
      formId,
      /** Beads touch where it is left out. */
      threadId: threadId.exactOptional(),
      tables,
    }),
    output: z.strictObject({
      widthMm: s.spread,
      heightMm: s.spread,
      beadsPerCm2: s.spread,
      areaMm2: z.number(),
      outline: z.array(
        z.strictObject({
          /** x and y in turn, mm, y down. */
          points: z.array(z.number()),
          isHole: z.boolean(),
          areaMm2: z.number(),
        }),
      ),
      /** In the order of bead numbers: rows from the top, each from the left. */
      beads: z.array(
        z.strictObject({
          row: z.number().int(),
          at: z.number().int(),
          label: z.string(),
          xMm: z.number(),
          yMm: z.number(),
          hole: z.enum(['vertical', 'horizontal']),
          touches: z.array(z.number().int()),
        }),
      ),
    }),
    reads: [],
  }),
  'engine.writeWords': query({
    summary: 'Writes a chart as a word chart, row by row in the order of work.',
    input: z.strictObject({
      chart: chartJson,
      startRow: z.number().int().min(0).exactOptional(),
      startSide: z.enum(['left', 'right']).exactOptional(),
    }),
    output: z.strictObject({
      intro: z.array(z.string()),
      lines: z.array(
        z.strictObject({
          text: z.string(),
          rows: z.array(z.number().int()),
          side: z.enum(['left', 'right']),
        }),
      ),
      text: z.string(),
    }),
    reads: [],
  }),
  'engine.readWords': query({
    summary: 'Reads a word chart back into a chart and says what was understood.',
    input: z.strictObject({ stitch, text: z.string().max(20_000_000) }),
    output: z.strictObject({
      chart: chartJson.nullable(),
      beads: z.number().int(),
      notes: z.array(z.string()),
      faults: z.array(s.refusal),
    }),
    reads: [],
  }),
  'engine.outline': query({
    summary: 'A new chart in the shape of an outline, by its size in beads or in mm.',
    input: z.strictObject({
      kind: z.enum(['diamond', 'triangle', 'teardrop', 'oval', 'leaf', 'band']),
      stitch,
      size: z.union([
        z.strictObject({ columns: beadsAcross, rows: beadsAcross }),
        z.strictObject({
          widthMm: sizeMm,
          heightMm: sizeMm,
          formId,
          threadId: threadId.exactOptional(),
        }),
      ]),
      tables,
    }),
    output: z.strictObject({
      chart: chartJson,
      columns: z.number().int(),
      rows: z.number().int(),
      beads: z.number().int(),
      notes: z.array(z.string()),
    }),
    reads: [],
  }),
} as const
