import { z } from 'zod'
import { act, query } from './call.ts'
import * as s from './schemas.ts'

export const draw = z.strictObject({
  materialId: s.id,
  name: z.string(),
  lotId: s.id,
  dyeLot: z.string(),
  drawer: z.string(),
  unit: s.unit,
  quantity: s.quantity,
})

/** The one lot each of some materials is drawn from; the studio chooses for the rest. */
export const chosenLots = z.record(s.id, s.id)

export const makeRequest = z.strictObject({
  designId: s.id,
  colourwayId: s.id,
  units: s.units,
  orderLineId: s.id.optional(),
  lots: chosenLots.optional(),
})

export const pieceState = z.enum(['here', 'reserved', 'sold', 'given', 'lost', 'unmade'])

export const piece = z.strictObject({
  id: s.id,
  code: z.string(),
  designId: s.id,
  designName: z.string(),
  colourwayName: z.string(),
  unitName: z.string(),
  madeOn: s.date,
  costMinor: s.amountMinor,
  state: pieceState,
  placeId: s.id.nullable(),
  placeName: z.string(),
  orderCode: z.string().nullable(),
  /** The asking price where it stands; null when it stands nowhere that sells. */
  askingMinor: s.priceMinor.nullable(),
  sale: z
    .strictObject({
      channelName: z.string(),
      soldOn: s.date,
      priceMinor: s.priceMinor,
      taxMinor: s.priceMinor,
      feesMinor: s.priceMinor,
      profitMinor: s.amountMinor,
    })
    .nullable(),
})

const pieceMovement = z.strictObject({
  id: z.number().int(),
  atMs: s.atMs,
  kind: z.enum([
    'made',
    'moved',
    'reserved',
    'released',
    'sold',
    'returned',
    'repaired',
    'unmade',
    'given',
    'lost',
    'reversed',
  ]),
  label: z.string(),
})

export const pieceCalls = {
  'makes.plan': query({
    summary: 'What making some units would take from which lots, or why it cannot be made now.',
    input: makeRequest,
    output: z.strictObject({
      draws: z.array(draw),
      costMinor: s.amountMinor,
      labourS: s.spread,
      faults: z.array(s.refusal),
      /** Lots that could be drawn from, of materials with more than one. */
      choices: z.array(
        z.strictObject({
          materialId: s.id,
          name: z.string(),
          unit: s.unit,
          needed: s.quantity,
          lots: z.array(
            z.strictObject({
              lotId: s.id,
              dyeLot: z.string(),
              available: s.signedQuantity,
              holdsAll: z.boolean(),
            }),
          ),
        }),
      ),
    }),
    reads: ['stock', 'designs', 'orders', 'makes', 'bench'],
  }),
  'makes.finish': act({
    summary:
      'Logs finished units: stock falls by the planned lots, pieces with codes appear at a place.',
    input: makeRequest.extend({
      placeId: s.id,
      madeOn: s.date,
      /** Bench time of all units together, when it was kept. */
      benchS: z.number().int().min(0).max(10_000_000).optional(),
      note: s.note,
    }),
    output: z.strictObject({
      makeId: s.id,
      pieces: z.array(z.strictObject({ id: s.id, code: z.string() })),
    }),
    changes: ['stock', 'makes', 'pieces', 'orders', 'designs', 'prices', 'bench'],
  }),
  'pieces.list': query({
    summary: 'Pieces with where each is, what it cost and what it earned.',
    input: z.strictObject({
      state: z.enum(['here', 'sold', 'all']),
      search: z.string().max(120).optional(),
    }),
    output: z.strictObject({ pieces: z.array(piece) }),
    reads: ['pieces', 'prices', 'workshop'],
  }),
  'pieces.read': query({
    summary: 'One piece with its history.',
    input: z.strictObject({ id: s.id }),
    output: z.strictObject({ piece, movements: z.array(pieceMovement) }),
    reads: ['pieces', 'prices', 'workshop'],
  }),
  'pieces.move': act({
    summary: 'Moves pieces to another place.',
    input: z.strictObject({ pieceIds: z.array(s.id).min(1).max(1_000), placeId: s.id }),
    output: s.nothing,
    changes: ['pieces'],
  }),
  'pieces.sell': act({
    summary: 'Records a sale of one piece with price, channel, fees, tax and cost of goods.',
    input: z.strictObject({
      pieceId: s.id,
      channelId: s.id,
      /** What the buyer pays, tax as the channel has it. */
      priceMinor: s.priceMinor,
      soldOn: s.date,
      note: s.note,
    }),
    output: z.strictObject({
      taxMinor: s.priceMinor,
      feesMinor: s.priceMinor,
      costMinor: s.amountMinor,
      profitMinor: s.amountMinor,
    }),
    changes: ['pieces', 'designs'],
  }),
  'pieces.end': act({
    summary: 'Records that a piece came back from a sale, was given away or was lost.',
    input: z.strictObject({
      pieceId: s.id,
      how: z.enum(['returned', 'given', 'lost']),
      /** Where a returned piece is now. */
      placeId: s.id.nullable(),
      /** The day it came back; absent for today. */
      on: s.date.optional(),
      note: s.note,
    }),
    output: s.nothing,
    changes: ['pieces', 'designs'],
  }),
  'tags.print': query({
    summary:
      'Makes a PDF of tags for pieces: name, code as QR and text, price, materials, care and caution.',
    input: z.strictObject({
      pieceIds: z.array(s.id).min(1).max(500),
      paper: z.enum(['a4', 'letter']),
      /** Print the asking price of this channel; absent for none. */
      channelId: s.id.optional(),
    }),
    output: s.madeFile,
    reads: ['pieces', 'prices', 'workshop'],
  }),
} as const
