import { z } from 'zod'
import { ownTables } from './bead-tables-schema.ts'
import { query } from './call.ts'
import { chartJson, stitch } from './design-calls.ts'
import * as s from './schemas.ts'

const lab = z.strictObject({
  l: z.number().min(0).max(100),
  a: z.number().min(-200).max(200),
  b: z.number().min(-200).max(200),
})
const anyColour = z.union([s.colourHex, lab])
const bead = z.strictObject({
  id: z.string().max(120),
  formId: z.string().max(60),
  colourHex: s.colourHex,
  finish: s.finish,
})
const pixels = z.number().int().min(1).max(20_000)

/** Colours and pictures: calls that need no database. */
export const engineColourCalls = {
  'engine.lab': query({
    summary: 'The Lab (D65) of sRGB colours.',
    input: z.strictObject({ colours: z.array(s.colourHex).min(1).max(100_000) }),
    output: z.strictObject({ colours: z.array(lab) }),
    reads: [],
  }),
  'engine.colourDifference': query({
    summary: 'CIEDE2000 between pairs of colours, each given as #rrggbb or as Lab.',
    input: z.strictObject({
      pairs: z
        .array(z.tuple([anyColour, anyColour]))
        .min(1)
        .max(100_000),
    }),
    output: z.strictObject({ differences: z.array(z.number()) }),
    reads: [],
  }),
  'engine.nearestBeads': query({
    summary: 'The beads that could stand in for one: same form, nearest colour and finish first.',
    input: z.strictObject({
      wanted: bead,
      candidates: z.array(bead).max(10_000),
      limit: z.number().int().min(1).max(10_000).exactOptional(),
    }),
    output: z.strictObject({
      beads: z.array(
        z.strictObject({
          id: z.string(),
          deltaE: z.number(),
          finishPenalty: z.number(),
          score: z.number(),
        }),
      ),
    }),
    reads: [],
  }),
  'engine.picture': query({
    summary: 'Turns a picture into a chart in colours of its own or in beads at hand.',
    input: z.strictObject({
      picture: z.strictObject({
        /** Bytes r, g, b, a of each pixel, row by row from the top. */
        rgbaBase64: z.base64().max(64 * 1024 * 1024),
        width: pixels,
        height: pixels,
      }),
      crop: z
        .strictObject({ x: z.number(), y: z.number(), width: z.number(), height: z.number() })
        .exactOptional(),
      /** A plain block of beads, or the beads of a chart whatever its shape. */
      onto: z.discriminatedUnion('kind', [
        z.strictObject({
          kind: z.literal('block'),
          stitch,
          columns: z.number().int().min(1).max(100_000),
          rows: z.number().int().min(1).max(100_000),
        }),
        z.strictObject({ kind: z.literal('chart'), chart: chartJson }),
      ]),
      formId: z.string().max(60),
      threadId: z.string().max(60).exactOptional(),
      fit: z.enum(['cover', 'contain', 'stretch']),
      /** What lies behind see-through parts; without it cells under half covered stay empty. */
      background: s.colourHex.exactOptional(),
      tone: z
        .strictObject({ lightness: z.number(), contrast: z.number(), chroma: z.number() })
        .exactOptional(),
      colours: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('free'), count: z.number().int() }),
        z.strictObject({
          kind: z.literal('beads'),
          beads: z.array(z.strictObject({ id: z.string().max(120), hex: s.colourHex })).max(10_000),
          most: z.number().int().exactOptional(),
        }),
      ]),
      dithering: z.enum(['none', 'diffusion', 'ordered']),
      /** Patches of fewer touching beads are recoloured; 1 keeps every single bead. */
      smallestPatch: z.number().int(),
      tables: ownTables.exactOptional(),
    }),
    output: z.strictObject({
      chart: chartJson,
      /** In the order of the chart's slots, the most used first. */
      palette: z.array(
        z.strictObject({
          label: z.string(),
          hex: s.colourHex,
          beadId: z.string().exactOptional(),
          count: z.number().int(),
        }),
      ),
      beads: z.number().int(),
      meanDeltaE: z.number(),
      worstDeltaE: z.number(),
      recoloured: z.number().int(),
    }),
    reads: [],
  }),
} as const
