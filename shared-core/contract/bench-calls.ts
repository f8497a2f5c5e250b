import { z } from 'zod'
import { act, query, step } from './call.ts'
import { colourwayMaterials, designBody } from './design-calls.ts'
import { cullRates, pace } from './engine-bead-calls.ts'
import { chosenLots, draw, makeRequest } from './piece-calls.ts'
import * as s from './schemas.ts'

/** Where the hand is: copy, part and step from 0, as the row reader counts them. */
export const benchPlace = z.strictObject({
  copy: z.number().int().min(0).max(10_000_000),
  part: z.number().int().min(0).max(10_000),
  step: z.number().int().min(0).max(10_000_000),
})

/** Where the hand is, in words' parts: the piece of how many, and its row or strand of how many. */
const handAt = z.strictObject({
  piece: z.string(),
  copy: z.number().int().min(1),
  copies: z.number().int().min(1),
  isMirrored: z.boolean(),
  /** Pieces of one unit. */
  pieces: z.number().int().min(1),
  at: z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('row'),
      rows: z.array(z.number().int()).readonly(),
      of: z.number().int(),
    }),
    z.strictObject({
      kind: z.literal('strand'),
      name: z.string(),
      number: z.number().int(),
      of: z.number().int(),
    }),
  ]),
})

const seconds = z.number().int().min(0).max(10_000_000)

/** A planned figure beside the actual one; null where it was not measured. */
const compared = z.strictObject({ planned: z.number(), actual: z.number().nullable() })

/** What was planned and what it came to, of finished work: beads, their mass, thread used, seconds. */
export const benchFigures = z.strictObject({
  beads: compared,
  massMg: compared,
  threadMm: compared,
  seconds: compared,
})

export const benchWork = z.strictObject({
  id: s.id,
  designId: s.id,
  designName: z.string(),
  versionId: s.id,
  version: z.number().int(),
  colourwayId: s.id,
  colourwayName: z.string(),
  unitName: z.string(),
  units: s.units,
  order: z
    .strictObject({ lineId: s.id, code: z.string(), customer: z.string(), dueOn: s.date })
    .nullable(),
  begunOn: s.date,
  state: z.enum(['begun', 'resting', 'done', 'given-up']),
  place: benchPlace,
  /** Null once all is stitched. */
  hand: handAt.nullable(),
  unitsDone: z.number().int().min(0),
  workedS: seconds,
  /** When place and time were last kept. */
  keptAtMs: s.atMs,
  /** Seconds that all units are reckoned to take, at this workshop's pace. */
  plannedS: s.spread,
  note: s.note,
  /** Once it is done. */
  finished: z
    .strictObject({
      makeId: s.id,
      madeOn: s.date,
      units: s.units,
      figures: benchFigures,
      leftOut: z.boolean(),
    })
    .nullable(),
})

/** A bead of the work: what its tube weighed before, and the slots it fills. */
const benchBead = z.strictObject({
  materialId: s.id,
  name: z.string(),
  unit: s.unit,
  tareMg: s.quantity.nullable(),
  beforeMg: s.quantity.nullable(),
  slots: z.array(z.strictObject({ label: z.string(), name: z.string(), count: z.number().int() })),
})

/** What is known at the end of some bench work. */
const finishRequest = z.strictObject({
  id: s.id,
  /** Pieces made; fewer than were begun leaves the rest to be made another time. */
  units: s.units,
  /** Bench time of all of them, set-up and finishing included, where it was kept. */
  benchS: seconds.optional(),
  /** Beads put aside, by slot; a slot that is absent was not counted. */
  culls: z.record(z.string().max(8), z.number().int().min(0).max(1_000_000)),
  /** Gross mg of tubes before and after. */
  weights: z
    .array(z.strictObject({ materialId: s.id, beforeMg: s.quantity, afterMg: s.quantity }))
    .max(500),
  /** Thread left over, all ends together, mm; absent when it was not measured. */
  threadLeftMm: z.number().int().min(0).max(10_000_000).optional(),
  /** Lots to draw from, by material; absent for those chosen when the work was begun. */
  lots: chosenLots.optional(),
})

const timedMake = z.strictObject({
  makeId: s.id,
  designName: z.string(),
  unitName: z.string(),
  units: s.units,
  madeOn: s.date,
  benchS: seconds,
  /** At the reference tables' pace. */
  referenceS: seconds,
  leftOut: z.boolean(),
})

export const learned = z.strictObject({ pace, cullRates, threadUse: s.spread })

export const benchCalls = {
  'bench.begin': act({
    summary: 'Begins work at the bench: the lots it will draw from are held until it is done.',
    input: makeRequest.extend({
      begunOn: s.date,
      /** Gross mg of tubes before the work, by material. */
      before: z.record(s.id, s.quantity),
    }),
    output: z.strictObject({ id: s.id }),
    changes: ['bench', 'stock', 'orders', 'designs'],
  }),
  'bench.list': query({
    summary: 'Work at the bench: under way, latest kept first, or finished, latest first.',
    input: z.strictObject({ state: z.enum(['under-way', 'finished']) }),
    output: z.strictObject({ works: z.array(benchWork) }),
    reads: ['bench', 'makes', 'designs', 'orders'],
  }),
  'bench.read': query({
    summary: 'One work with the design it is made from, what fills its slots and what it holds.',
    input: z.strictObject({ id: s.id }),
    output: z.strictObject({
      work: benchWork,
      body: designBody,
      fillings: colourwayMaterials,
      held: z.array(draw),
      beads: z.array(benchBead),
    }),
    reads: ['bench', 'makes', 'designs', 'orders', 'stock'],
  }),
  'bench.keep': step({
    summary: 'Keeps where the hand is and the time worked; stands outside the history.',
    input: z.strictObject({
      id: s.id,
      place: benchPlace,
      workedS: seconds,
      unitsDone: z.number().int().min(0).max(10_000),
      resting: z.boolean(),
    }),
    output: s.nothing,
    changes: ['bench'],
  }),
  'bench.reckon': query({
    summary: 'What finishing some work would book, planned against actual, or why it cannot be.',
    input: finishRequest,
    output: z.strictObject({
      lines: z.array(draw.extend({ kind: z.enum(['made', 'waste', 'weighed']) })),
      materials: z.array(
        z.strictObject({
          materialId: s.id,
          name: z.string(),
          unit: s.unit,
          planned: s.quantity,
          actual: s.quantity.nullable(),
        }),
      ),
      figures: benchFigures,
      costMinor: s.amountMinor,
      plannedCostMinor: s.amountMinor,
      faults: z.array(s.refusal),
    }),
    reads: ['bench', 'stock', 'designs', 'orders', 'makes'],
  }),
  'bench.finish': act({
    summary: 'Finishes work: pieces reach a place, stock falls by what was weighed and counted.',
    input: finishRequest.extend({ placeId: s.id, madeOn: s.date, note: s.note }),
    output: z.strictObject({
      makeId: s.id,
      pieces: z.array(z.strictObject({ id: s.id, code: z.string() })),
    }),
    changes: ['bench', 'stock', 'makes', 'pieces', 'orders', 'designs', 'prices'],
  }),
  'bench.giveUp': act({
    summary: 'Gives work up: nothing is booked, and what it held is free again.',
    input: z.strictObject({ id: s.id, note: s.note }),
    output: s.nothing,
    changes: ['bench', 'stock', 'orders', 'designs'],
  }),
  'workshop.pace': query({
    summary: 'What this workshop has learnt of itself, and the timed makes it was learnt from.',
    input: s.nothing,
    output: z.strictObject({
      learned,
      /** Sessions that count towards each figure. */
      sessions: z.strictObject({
        time: z.number().int(),
        thread: z.number().int(),
        culls: z.number().int(),
      }),
      cullCounts: z.array(
        z.strictObject({
          formId: z.string(),
          formName: z.string(),
          handled: z.number().int(),
          culled: z.number().int(),
          table: s.spread,
        }),
      ),
      makes: z.array(timedMake),
    }),
    reads: ['makes', 'designs'],
  }),
  'pace.leaveOut': act({
    summary: 'Leaves timed makes out of what is learnt, or takes them in again.',
    input: z.strictObject({ makeIds: z.array(s.id).min(1).max(10_000), leftOut: z.boolean() }),
    output: s.nothing,
    changes: ['makes', 'bench', 'prices', 'designs', 'orders', 'stock'],
  }),
} as const
