import { z } from 'zod'
import { act, query } from './call.ts'
import * as s from './schemas.ts'

export const materialKind = z.enum(['bead', 'thread', 'finding', 'packaging'])

/** What the maker says of a material. Beads are kept in mg, thread in mm, the rest in pieces. */
export const materialFields = z.strictObject({
  code: s.code,
  name: s.name,
  kind: materialKind,
  /** Bead form or thread from the tables; null for findings and packaging. */
  formId: z.string().max(60).nullable(),
  colourHex: s.colourHex.nullable(),
  finish: s.finish.nullable(),
  /** Whether dye lots of it show and so are not mixed within a piece. */
  lotsMatter: z.boolean(),
  /** Warn at or below this much available; null for never. */
  lowAt: s.quantity.nullable(),
  /** Tare of the tube or bag it stands in, mg. */
  tareMg: s.quantity.nullable(),
  drawer: z.string().max(40),
  note: s.note,
  /** What the supplier declares of a metal: nickel release, lead, cadmium. A claim, not a test. */
  declaration: s.note,
})

/** A material as lists show it, quantities in its unit. `available` is on hand less reserved. */
export const materialRow = materialFields.extend({
  id: s.id,
  unit: s.unit,
  onHand: s.signedQuantity,
  reserved: s.quantity,
  available: s.signedQuantity,
  lots: z.number().int(),
  valueMinor: s.amountMinor,
  alert: z.enum(['none', 'low', 'out', 'short', 'unweighed']),
  /** Beads on hand by the best calibration; null where it is not beads. */
  beads: s.spread.nullable(),
})

export const lot = z.strictObject({
  id: s.id,
  materialId: s.id,
  dyeLot: z.string().max(60),
  supplierId: s.id.nullable(),
  boughtOn: s.date.nullable(),
  onHand: s.signedQuantity,
  /** What `costQuantity` of it cost; null when unknown. */
  costMinor: s.priceMinor.nullable(),
  costQuantity: s.quantity.nullable(),
  note: s.note,
})

export const movement = z.strictObject({
  id: z.number().int(),
  atMs: s.atMs,
  lotId: s.id,
  quantity: s.signedQuantity,
  kind: z.enum([
    'opening',
    'received',
    'made',
    'counted',
    'weighed',
    'returned',
    'waste',
    'reversed',
  ]),
  label: z.string(),
})

export const weighing = z.strictObject({
  id: s.id,
  atMs: s.atMs,
  beads: z.number().int().min(1),
  grossMg: s.quantity,
  tareMg: s.quantity,
  scaleResolutionMg: z.number().int().min(1),
})

export const offer = z.strictObject({
  id: s.id,
  materialId: s.id,
  supplierId: s.id,
  packQuantity: z.number().int().min(1),
  priceMinor: s.priceMinor,
})

/** What a column of the spreadsheet holds. */
export const stockColumn = z.enum([
  'ignore',
  'code',
  'name',
  'kind',
  'size',
  'colour',
  'finish',
  'grams',
  'pieces',
  'pack-price',
  'pack',
  'supplier',
  'dye-lot',
  'bought-on',
  'drawer',
  'note',
])

export const stockFileRequest = z.strictObject({
  file: s.fileBytes,
  /** Column by column; absent for the studio's own guess. */
  columns: z.array(stockColumn).max(200).optional(),
  decimalMark: z.enum([',', '.']).optional(),
})

export const stockFilePreview = z.strictObject({
  /** How the file was read: `UTF-8 with mark, semicolons, decimal comma`. */
  understood: z.strictObject({
    encoding: z.string(),
    delimiter: z.string(),
    decimalMark: z.enum([',', '.']),
  }),
  headings: z.array(z.string()),
  columns: z.array(stockColumn),
  /** First rows as they stand in the file, for mapping by eye. */
  sampleRows: z.array(z.array(z.string())),
  /** Rows that can be taken, as they would be written. */
  rows: z.array(
    z.strictObject({
      line: z.number().int(),
      code: z.string(),
      name: z.string(),
      kind: materialKind,
      formId: z.string().nullable(),
      colourHex: z.string().nullable(),
      finish: s.finish.nullable(),
      quantity: s.quantity.nullable(),
      unit: s.unit,
      packQuantity: z.number().int().nullable(),
      packPriceMinor: s.priceMinor.nullable(),
      supplier: z.string(),
      dyeLot: z.string(),
      boughtOn: s.date.nullable(),
      drawer: z.string(),
      note: z.string(),
      /** `new` material, or another `lot` of one in the file or the store. */
      becomes: z.enum(['new-material', 'new-lot']),
      remarks: z.array(z.string()),
    }),
  ),
  /** Rows that cannot be taken, each fault with its line and field. */
  badRows: z.array(
    z.strictObject({ line: z.number().int(), code: z.string(), faults: z.array(s.refusal) }),
  ),
  /** Faults of the whole file: no code column, two columns for grams. */
  faults: z.array(s.refusal),
})

export const stockCalls = {
  'materials.list': query({
    summary: 'All materials with what is on hand, reserved and available.',
    input: z.strictObject({
      search: z.string().max(120).optional(),
      kind: materialKind.optional(),
    }),
    output: z.strictObject({ materials: z.array(materialRow) }),
    reads: ['stock', 'orders'],
  }),
  'materials.read': query({
    summary: 'One material with its lots, movements, weighings and offers.',
    input: z.strictObject({ id: s.id }),
    output: z.strictObject({
      material: materialRow,
      lots: z.array(lot),
      movements: z.array(movement),
      weighings: z.array(weighing),
      offers: z.array(offer),
      beadsPerGram: s.spread.nullable(),
    }),
    reads: ['stock', 'orders'],
  }),
  'materials.save': act({
    summary: 'Adds a material (without id) or saves one.',
    input: z.strictObject({ id: s.id.optional(), material: materialFields }),
    output: z.strictObject({ id: s.id }),
    changes: ['stock'],
  }),
  'lots.receive': act({
    summary: 'Takes a new lot of a material into stock.',
    input: z.strictObject({
      materialId: s.id,
      quantity: s.quantity,
      dyeLot: z.string().max(60),
      supplierId: s.id.nullable(),
      boughtOn: s.date.nullable(),
      costMinor: s.priceMinor.nullable(),
      note: s.note,
    }),
    output: z.strictObject({ lotId: s.id }),
    changes: ['stock'],
  }),
  'lots.count': act({
    summary:
      'Sets what is on hand of a lot to what was counted or weighed, by a movement for the difference.',
    input: z.strictObject({
      lotId: s.id,
      quantity: s.quantity,
      kind: z.enum(['counted', 'weighed']),
      note: s.note,
    }),
    output: z.strictObject({ difference: s.signedQuantity }),
    changes: ['stock'],
  }),
  'weighings.add': act({
    summary: 'Keeps a weighing of counted beads; all weighings of a material are pooled.',
    input: z.strictObject({
      materialId: s.id,
      beads: z.number().int().min(1).max(1_000_000),
      grossMg: s.quantity,
      tareMg: s.quantity,
    }),
    output: z.strictObject({ id: s.id, beadsPerGram: s.spread }),
    changes: ['stock', 'designs'],
  }),
  'offers.save': act({
    summary: 'Adds a supplier’s pack of a material (without id) or saves one.',
    input: z.strictObject({ offer: offer.partial({ id: true }) }),
    output: z.strictObject({ id: s.id }),
    changes: ['stock'],
  }),
  'stockFile.preview': query({
    summary: 'Reads a stock spreadsheet and says what would be written; writes nothing.',
    input: stockFileRequest,
    output: stockFilePreview,
    reads: ['stock'],
  }),
  'stockFile.import': act({
    summary:
      'Writes the rows of a stock spreadsheet, all or nothing; bad rows must be left out by name.',
    input: stockFileRequest.extend({ leaveOutLines: z.array(z.number().int()).max(100_000) }),
    output: z.strictObject({
      materials: z.number().int(),
      lots: z.number().int(),
      suppliers: z.number().int(),
      leftOut: z.number().int(),
    }),
    changes: ['stock', 'workshop'],
  }),
} as const
