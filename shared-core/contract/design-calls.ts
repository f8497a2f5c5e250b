import { z } from 'zod'
import { STITCH_KINDS } from '../chart/chart.ts'
import { act, query } from './call.ts'
import * as s from './schemas.ts'

export const stitch = z.enum(STITCH_KINDS)

const slotLabel = z.string().regex(/^[A-Z]{1,4}$/, 'expected a slot such as A')
const partId = z.string().min(1).max(40)

export const chartJson = z.strictObject({
  stitch,
  rows: z
    .array(
      z.strictObject({
        start: z.number().int().min(0).max(400_000),
        cells: z
          .string()
          .max(2_000_000)
          .regex(
            /^$|^[1-9]\d{0,6}([A-Z]{1,4}|-)( [1-9]\d{0,6}([A-Z]{1,4}|-))*$/,
            'expected runs such as 3A 2- 1B',
          ),
      }),
    )
    .max(100_000),
})

const routeSettings = z.strictObject({
  startRow: z.number().int().min(0).exactOptional(),
  startSide: z.enum(['left', 'right']).exactOptional(),
  start: z.enum(['ladder', 'two-bead']).exactOptional(),
  lockEveryRow: z.boolean().exactOptional(),
  reinforce: z.boolean().exactOptional(),
  loopPasses: z.number().int().min(1).max(6).exactOptional(),
  startTailMm: z.number().int().min(0).max(5_000).exactOptional(),
  endTailMm: z.number().int().min(0).max(5_000).exactOptional(),
  workingLengthMm: z.number().int().min(300).max(20_000).exactOptional(),
})

export const panel = z.strictObject({
  kind: z.literal('panel'),
  id: partId,
  name: s.name,
  chart: chartJson,
  formId: z.string().max(60),
  copies: z.number().int().min(1).max(1_000),
  mirrored: z.boolean(),
  route: routeSettings,
})

export const strand = z.strictObject({
  kind: z.literal('strand'),
  id: partId,
  name: s.name,
  shape: z.enum(['fringe', 'loop']),
  beads: z
    .string()
    .max(20_000)
    .regex(/^[1-9]\d{0,6}[A-Z]{1,4}( [1-9]\d{0,6}[A-Z]{1,4})*$/, 'expected runs such as 12A 1B'),
  findingId: partId.exactOptional(),
  anchor: z
    .strictObject({
      panelId: partId,
      row: z.number().int().min(0),
      bead: z.number().int().min(0),
    })
    .exactOptional(),
  copies: z.number().int().min(1).max(1_000),
})

export const designBody = z.strictObject({
  unitName: z.string().trim().min(1).max(40),
  palette: z
    .array(
      z.strictObject({
        label: slotLabel,
        name: z.string().max(120),
        formId: z.string().max(60),
        colourHex: s.colourHex,
        finish: s.finish,
      }),
    )
    .max(2_000),
  parts: z.array(z.discriminatedUnion('kind', [panel, strand])).max(500),
  extras: z
    .array(
      z.strictObject({
        id: partId,
        kind: z.enum(['finding', 'packaging']),
        name: s.name,
        count: z.number().int().min(1).max(10_000),
      }),
    )
    .max(200),
  threadId: z.string().max(60),
  threadStrands: z.union([z.literal(1), z.literal(2)]).exactOptional(),
  needleSize: z.string().max(20),
  setUpS: z.number().int().min(0).max(360_000).exactOptional(),
  finishingS: z.number().int().min(0).max(360_000).exactOptional(),
})

/** Which material fills a key: `slot:A`, `extra:<id>` or `thread`. */
export const colourwayMaterials = z.record(z.string().max(60), s.id)

export const colourway = z.strictObject({
  id: s.id,
  name: s.name,
  materials: colourwayMaterials,
})

const designRow = z.strictObject({
  id: s.id,
  name: s.name,
  unitName: z.string(),
  tags: z.array(z.string()),
  version: z.number().int(),
  beads: z.number().int(),
  archived: z.boolean(),
  savedAtMs: s.atMs,
  /** Units that can be made from what is available now, in the first colourway; null when beads are not assigned. */
  makeable: z.number().int().nullable(),
  /** Pieces sold of it and what they took. */
  sold: z.number().int(),
  takenMinor: s.amountMinor,
})

/** What one key of the bill takes in a colourway, and what that costs; null where no cost is known. */
const colourwayLine = z.strictObject({
  key: z.string(),
  name: z.string(),
  kind: z.enum(['bead', 'thread', 'finding', 'packaging']),
  materialId: s.id.nullable(),
  materialName: z.string().nullable(),
  unit: s.unit,
  quantity: s.quantity,
  basis: s.basis,
  costMinor: s.amountMinor.nullable(),
})

/** A colourway with what stock and prices say of one unit in it. */
const colourwayStanding = colourway.extend({
  lines: z.array(colourwayLine),
  /** Cost of what is known of the materials, and how many lines are not. */
  costMinor: s.amountMinor,
  costsUnknown: z.number().int(),
  /** Units that can be made beside what is promised; null until every key has a material. */
  makeable: z.number().int().nullable(),
  unassigned: z.array(z.string()),
  /** What allows no more than that. */
  limits: z.array(
    z.strictObject({
      materialId: s.id,
      name: z.string(),
      unit: s.unit,
      perUnit: s.quantity,
      available: s.signedQuantity,
    }),
  ),
})

export const chartFileRequest = z.strictObject({
  file: s.fileBytes,
  stitch: stitch.optional(),
})

export const designCalls = {
  'designs.list': query({
    summary: 'All designs with what the gallery shows.',
    input: z.strictObject({
      search: z.string().max(120).optional(),
      archived: z.boolean().optional(),
    }),
    output: z.strictObject({ designs: z.array(designRow) }),
    reads: ['designs', 'stock', 'orders', 'pieces'],
  }),
  'designs.read': query({
    summary: 'One design: a version of it (the latest unless named), its versions and colourways.',
    input: z.strictObject({ id: s.id, version: z.number().int().min(1).optional() }),
    output: z.strictObject({
      id: s.id,
      name: s.name,
      tags: z.array(z.string()),
      archived: z.boolean(),
      versionId: s.id,
      version: z.number().int(),
      body: designBody,
      colourways: z.array(colourway),
      versions: z.array(
        z.strictObject({
          id: s.id,
          version: z.number().int(),
          savedAtMs: s.atMs,
          note: z.string(),
        }),
      ),
      /** The workshop's own weighings pooled by material, for grams and counts in the window. */
      beadsPerGram: z.record(z.string(), s.spread),
    }),
    reads: ['designs', 'stock'],
  }),
  'designs.drawing': query({
    summary: 'What is drawn of a design: its latest version in the beads of its first colourway.',
    input: z.strictObject({ id: s.id }),
    output: z.strictObject({
      versionId: s.id,
      body: designBody,
      /** Colour and finish of each slot: its bead’s, else the chart’s own. */
      looks: z.array(z.strictObject({ hex: s.colourHex, finish: s.finish })),
    }),
    reads: ['designs', 'stock'],
  }),
  'designs.save': act({
    summary:
      'Saves a design as a new version (without id: a new design with one colourway); versions never change.',
    input: z.strictObject({
      id: s.id.optional(),
      name: s.name,
      tags: z.array(z.string().trim().min(1).max(40)).max(20),
      body: designBody,
      note: z.string().max(500),
      /** What fills the first colourway of a new design; nothing when absent. */
      materials: colourwayMaterials.optional(),
    }),
    output: z.strictObject({ id: s.id, versionId: s.id, version: z.number().int() }),
    changes: ['designs', 'prices'],
  }),
  'designs.archive': act({
    summary: 'Puts a design away, or brings it back.',
    input: z.strictObject({ id: s.id, archived: z.boolean() }),
    output: s.nothing,
    changes: ['designs'],
  }),
  'colourways.save': act({
    summary: 'Adds a colourway (without id) or saves one: which material fills which slot.',
    input: z.strictObject({
      designId: s.id,
      id: s.id.optional(),
      name: s.name,
      materials: colourwayMaterials,
    }),
    output: z.strictObject({ id: s.id }),
    changes: ['designs', 'prices'],
  }),
  'colourways.list': query({
    summary:
      'The colourways of a design’s latest version: what each takes, costs and allows to make now.',
    input: z.strictObject({ designId: s.id }),
    output: z.strictObject({ colourways: z.array(colourwayStanding) }),
    reads: ['designs', 'stock', 'orders', 'prices', 'workshop'],
  }),
  'colourways.remove': act({
    summary: 'Takes a colourway out of a design; what was made and sold in it stays as it was.',
    input: z.strictObject({ designId: s.id, id: s.id }),
    output: s.nothing,
    changes: ['designs', 'prices'],
  }),
  'chartFile.preview': query({
    summary: 'Reads a chart from a grid file and says what was understood; writes nothing.',
    input: chartFileRequest,
    output: z.strictObject({
      chart: chartJson.nullable(),
      understood: z.array(z.string()),
      counts: z.array(z.strictObject({ label: slotLabel, count: z.number().int() })),
      faults: z.array(s.refusal),
    }),
    reads: [],
  }),
} as const
