import { z } from 'zod'
import { colourHex } from './schemas.ts'

const stroke = z.strictObject({ colour: colourHex, widthMm: z.number() }).nullable()

/** One thing on a page, mm from its upper left corner, y down; places are x, y, x, y in one list. */
export const pageMark = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('text'),
    xMm: z.number(),
    /** Of the baseline. */
    yMm: z.number(),
    text: z.string(),
    face: z.enum(['text', 'text-strong', 'title']),
    sizePt: z.number(),
    colour: colourHex,
    align: z.enum(['left', 'right', 'centre']),
  }),
  z.strictObject({
    kind: z.literal('line'),
    placesMm: z.array(z.number()).length(4),
    widthMm: z.number(),
    colour: colourHex,
  }),
  z.strictObject({
    kind: z.literal('box'),
    xMm: z.number(),
    yMm: z.number(),
    widthMm: z.number(),
    heightMm: z.number(),
    radiusMm: z.number(),
    fill: colourHex.nullable(),
    stroke,
  }),
  z.strictObject({
    /** One outline at many places, such as the beads of one colour. */
    kind: z.literal('stamps'),
    outline: z.array(
      z.strictObject({ step: z.enum(['M', 'L', 'C', 'Z']), at: z.array(z.number()) }),
    ),
    placesMm: z.array(z.number()),
    /** Clockwise. */
    turnRad: z.number(),
    fill: colourHex.nullable(),
    stroke,
  }),
])

/** A page of a document to look at, as it will be printed. */
export const sheetPage = z.strictObject({
  widthMm: z.number(),
  heightMm: z.number(),
  marks: z.array(pageMark),
})
