import { z } from 'zod'
import { STITCH_KINDS } from '../chart/chart.ts'
import {
  beadForm,
  beadNeedle,
  beadThread,
  countedWeighing,
  ownTables,
} from './bead-tables-schema.ts'
import { query } from './call.ts'
import * as s from './schemas.ts'

const formId = z.string().max(60)
/** Weighings of counted beads; the form's table figure serves without any. */
const weighings = z.array(countedWeighing).max(10_000)
const tables = ownTables.exactOptional()
const countedBeads = z.number().int().min(0).max(1_000_000_000)

/** A workshop's pace: seconds a unit, a bead by stitch, a row. */
export const pace = z.strictObject({
  setUpS: s.spread,
  perBeadS: z.strictObject({
    brick: s.spread,
    peyote: s.spread,
    square: s.spread,
    loom: s.spread,
    ladder: s.spread,
    herringbone: s.spread,
    'right-angle-weave': s.spread,
    strand: s.spread,
  }),
  perRowS: s.spread,
  finishingS: s.spread,
})

/** The share of beads put aside, by form id. */
export const cullRates = z.record(z.string().max(64), s.spread)

/** Beads, scales, holes and hands: calls that need no database. */
export const engineBeadCalls = {
  'engine.tables': query({
    summary: 'The bead forms, threads, needles and pace that the core reckons with, yours added.',
    input: z.strictObject({ tables }),
    output: z.strictObject({
      forms: z.array(beadForm.extend({ evidence: z.string().exactOptional() })),
      threads: z.array(beadThread),
      needles: z.array(beadNeedle),
      pace,
    }),
    reads: [],
  }),
  'engine.calibrate': query({
    summary: 'Pools weighings of counted beads into beads per gram with a 95 % range.',
    input: z.strictObject({ formId, weighings, tables }),
    output: z.strictObject({
      beadsPerGram: s.spread,
      /** Bead-to-bead standard deviation over mean mass. */
      cv: z.number(),
      beads: z.number().int(),
      weighings: z.number().int(),
      halfDigit: z.boolean(),
      disagree: z.boolean(),
    }),
    reads: [],
  }),
  'engine.beadsToCount': query({
    summary:
      'How many beads to count and weigh so that counts by weight come out as near as wanted.',
    input: z.strictObject({
      formId,
      /** Wanted accuracy in percent, with 95 % certainty. */
      accuracyPercent: z.number().min(0.01).max(50),
      digitMg: z.number().min(0).max(10_000),
      tables,
    }),
    output: z.strictObject({ beads: z.number().int(), beadMg: z.number(), cv: z.number() }),
    reads: [],
  }),
  'engine.countByWeight': query({
    summary: 'How many beads lie in a tube or dish, from its gross weight, tare and calibration.',
    input: z.strictObject({
      formId,
      weighings,
      grossMg: s.quantity,
      tareMg: s.quantity,
      digitMg: z.number().min(0).max(10_000),
      tables,
    }),
    output: z.strictObject({ netMg: z.number(), count: s.spread, beadsPerGram: s.spread }),
    reads: [],
  }),
  'engine.massOfCount': query({
    summary: 'What counted beads weigh, and what must be at hand to have them, culls included.',
    input: z.strictObject({
      ...{ formId, weighings, count: countedBeads, tables },
      /** What the workshop has learnt; the form's own share where it is left out. */
      cullRates: cullRates.exactOptional(),
    }),
    output: z.strictObject({ massMg: s.spread, needMg: s.spread, beadsPerGram: s.spread }),
    reads: [],
  }),
  'engine.holeFill': query({
    summary:
      'How full a hole is after some passes of a thread, where it sticks, and what makes room.',
    input: z.strictObject({
      formId,
      threadId: z.string().max(60),
      needleSize: z.string().max(20),
      /** Strands of thread in each pass: 1, or 2 for a doubled thread. */
      strands: z.union([z.literal(1), z.literal(2)]),
      passes: z.number().int().min(0).max(10_000),
      tables,
    }),
    output: z.strictObject({
      /** Passes the hole takes, the needle's last one included. */
      holds: s.spread,
      fill: z.enum(['free', 'tight', 'full']),
      /** State after each pass, the first pass first. */
      states: z.array(z.enum(['free', 'tight', 'full'])),
      /** The pass that no longer goes through; null while all do. */
      sticksAt: z.number().int().nullable(),
      /** What would make these passes fit; null where they do. */
      advice: z.string().nullable(),
    }),
    reads: [],
  }),
  'engine.learnPace': query({
    summary: 'The pace of a workshop from its logged sessions, drawn towards the pace before them.',
    input: z.strictObject({
      sessions: z
        .array(
          z.strictObject({
            work: z.enum([...STITCH_KINDS, 'strand', 'set-up', 'finishing']),
            beads: countedBeads,
            rows: countedBeads,
            units: countedBeads,
            seconds: z.number().int().min(0).max(10_000_000),
          }),
        )
        .max(10_000),
      /** The reference pace where it is left out. */
      prior: pace.exactOptional(),
    }),
    output: pace,
    reads: [],
  }),
} as const
