import { z } from 'zod'
import { query } from './call.ts'
import { sheetPage } from './page-marks.ts'
import * as s from './schemas.ts'

const ofDesign = z.strictObject({
  designId: s.id,
  colourwayId: s.id,
  /** The latest unless named. */
  version: z.number().int().min(1).optional(),
})

const sheetWish = ofDesign.extend({
  /** For her own bench (drawers and codes shown), for a buyer, or for the students of a class. */
  audience: z.enum(['self', 'sale', 'class']),
  paper: z.enum(['a4', 'letter']),
  /** What the reader may do with the sheet, in the maker's words. */
  terms: z.string().max(500).optional(),
})

/** What could not be printed as written, in plain sentences. */
const notes = z.array(z.string())

/** Pattern sheets and the files beside them: made in a thread of their own, so that nobody waits behind them. */
export const documentCalls = {
  'designs.sheet': query({
    summary:
      'Makes the PDF of a pattern sheet: cover, materials, charts, word chart, steps and cautions.',
    input: sheetWish,
    output: s.madeFile.extend({ notes }),
    reads: ['designs', 'stock', 'makes', 'workshop'],
  }),
  'designs.sheetPage': query({
    summary: 'One page of a pattern sheet to look at, as it will be printed.',
    input: sheetWish.extend({ number: z.number().int().min(1).max(100_000) }),
    output: z.strictObject({ page: sheetPage, pages: z.number().int().min(1), notes }),
    reads: ['designs', 'stock', 'makes', 'workshop'],
  }),
  'designs.export': query({
    summary:
      'Makes a file beside the sheet: a chart as SVG or as a grid, the word chart as text, the counts as a table.',
    input: ofDesign.extend({
      as: z.enum(['chart-svg', 'grid', 'word-chart', 'counts']),
      /** The panel a chart or grid is of; the first unless named. */
      partId: z.string().min(1).max(40).optional(),
    }),
    output: s.madeFile.omit({ pages: true }),
    reads: ['designs', 'stock', 'makes', 'workshop'],
  }),
  'documents.stop': query({
    summary: 'Ends the documents being made; whoever asked for them is told so.',
    input: s.nothing,
    output: z.strictObject({ stopped: z.number().int().min(0) }),
    reads: [],
  }),
} as const
