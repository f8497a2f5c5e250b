import { z } from 'zod'
import { query, step } from './call.ts'
import { chartJson, designBody, panel, stitch, strand } from './design-calls.ts'
import { priceInputs } from './price-calls.ts'
import * as s from './schemas.ts'

const partId = panel.shape.id
const rowNumber = z.number().int().min(0).max(100_000)

const chartPatch = z.strictObject({
  stitch,
  splices: z
    .array(z.strictObject({ row: rowNumber, remove: rowNumber, insert: chartJson.shape.rows }))
    .max(100_001),
  shift: z.strictObject({ row: z.number().int(), at: z.number().int() }),
})

const { unitName, palette, extras, threadId, threadStrands, needleSize, setUpS, finishingS } =
  designBody.shape

const piecesEdit = z.strictObject({
  kind: z.literal('pieces'),
  unitName: unitName.exactOptional(),
  palette: palette.exactOptional(),
  extras: extras.exactOptional(),
  threadId: threadId.exactOptional(),
  threadStrands: threadStrands.unwrap().nullable().exactOptional(),
  needleSize: needleSize.exactOptional(),
  setUpS: setUpS.unwrap().nullable().exactOptional(),
  finishingS: finishingS.unwrap().nullable().exactOptional(),
  order: z.array(partId).max(500).exactOptional(),
  parts: z
    .array(
      z.discriminatedUnion('kind', [panel.extend({ chart: chartJson.exactOptional() }), strand]),
    )
    .max(500)
    .exactOptional(),
})

const bodyEdit = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('chart'), partId, patch: chartPatch }),
  piecesEdit,
])

const stroke = z.strictObject({
  label: z.string().trim().min(1).max(120),
  redo: z.array(bodyEdit).min(1).max(500),
  undo: z.array(bodyEdit).min(1).max(500),
})

const numbered = stroke.extend({
  /** Counted from 1 since the drawing was first opened. */
  seq: z.number().int().min(1),
})

const position = z.number().int().min(0)

export const draftCalls = {
  'drafts.open': step({
    summary:
      'Puts a design on the drawing table, or finds it there as it was left, with its latest strokes.',
    input: z.strictObject({ designId: s.id }),
    output: z.strictObject({
      designId: s.id,
      name: s.name,
      tags: z.array(z.string()),
      /** The design's latest version. */
      version: z.number().int(),
      body: designBody,
      /** Strokes done, and strokes there are: the rest has been undone. */
      position,
      count: position,
      /** Strokes near the position, in order; older ones are read with `drafts.strokes`. */
      strokes: z.array(numbered),
      /** The position at which the drawing is the same as the latest version. */
      savedPosition: position.nullable(),
      /** Whether a version has been saved elsewhere that what lies on the table does not know. */
      isBehind: z.boolean(),
    }),
    changes: ['drafts'],
  }),
  'drafts.state': query({
    summary: 'Whether something lies on the drawing table that is in no version yet.',
    input: z.strictObject({ designId: s.id }),
    output: z.strictObject({ hasUnsaved: z.boolean(), strokes: position }),
    reads: ['drafts', 'designs'],
  }),
  'drafts.strokes': query({
    summary: 'Strokes of a drawing by number, at most 500, for undo far back.',
    input: z.strictObject({ designId: s.id, from: position, to: position }),
    output: z.strictObject({ strokes: z.array(numbered) }),
    reads: ['drafts'],
  }),
  'drafts.stroke': step({
    summary: 'Adds strokes after a position; strokes that had been undone there are forgotten.',
    input: z.strictObject({
      designId: s.id,
      /** How many strokes lie before the first of these. */
      position,
      strokes: z.array(stroke).min(1).max(1_000),
    }),
    output: z.strictObject({ position, count: position }),
    changes: ['drafts'],
  }),
  'drafts.moveTo': step({
    summary: 'Undoes or redoes strokes until so many are done.',
    input: z.strictObject({ designId: s.id, position }),
    output: z.strictObject({ position, count: position }),
    changes: ['drafts'],
  }),
  'drafts.stock': query({
    summary:
      'What a drawing in a colourway is priced and made from: rates, and what of each lot is not promised.',
    input: z.strictObject({ designId: s.id, colourwayId: s.id }),
    output: z.strictObject({
      /** As for the latest version; its materials are to be reckoned anew. */
      inputs: priceInputs,
      materials: z.array(
        z.strictObject({
          key: z.string(),
          materialId: s.id,
          name: z.string(),
          unit: s.unit,
          lotsMatter: z.boolean(),
          /** `costMinor` buys `costQuantity`; null when no cost is known. */
          cost: z
            .strictObject({ costMinor: s.priceMinor, costQuantity: z.number().int().min(1) })
            .nullable(),
        }),
      ),
      lots: z.array(z.strictObject({ lotId: s.id, materialId: s.id, onHand: s.signedQuantity })),
    }),
    reads: ['prices', 'workshop', 'designs', 'stock', 'orders'],
  }),
  'drafts.forget': step({
    summary: 'Clears the drawing table of a design, strokes and all; its versions stay.',
    input: z.strictObject({ designId: s.id }),
    output: s.nothing,
    changes: ['drafts'],
  }),
} as const
