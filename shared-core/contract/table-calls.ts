import { z } from 'zod'
import { beadForm, beadThread } from './bead-tables-schema.ts'
import { act, query, type Topic } from './call.ts'
import * as s from './schemas.ts'

const entryId = z.string().trim().min(1, 'expected the id of a form or thread').max(60)

/** Where an entry of the tables comes from; `replaces` is the workshop's own in a reference's place. */
const origin = z.enum(['reference', 'own', 'replaces'])

/** Materials and designs that name an entry. */
const uses = z.strictObject({ materials: z.number().int(), designs: z.number().int() })

/** How a reference form's figures were found; the workshop's own are `own`. */
const evidence = z.enum(['several-sources', 'one-source', 'computed', 'trade-knowledge', 'own'])

/** What hangs on the tables: counts, lengths, weights, cover and prices all follow from them. */
const FOLLOW = [
  'tables',
  'stock',
  'designs',
  'orders',
  'prices',
  'makes',
  'bench',
  'pieces',
] as const satisfies readonly Topic[]

export const tableCalls = {
  'tables.list': query({
    summary:
      'Every bead form and thread known, with basis, range, where it comes from and its uses.',
    input: s.nothing,
    output: z.strictObject({
      forms: z.array(beadForm.extend({ origin, evidence, uses })),
      threads: z.array(beadThread.extend({ origin, uses })),
    }),
    reads: ['tables', 'stock', 'designs'],
  }),
  'tables.own': query({
    summary:
      'The workshop’s own bead forms and threads, as `tables.take` and the engine’s `tables` accept them.',
    input: s.nothing,
    output: z.strictObject({ forms: z.array(beadForm), threads: z.array(beadThread) }),
    reads: ['tables'],
  }),
  'tables.saveForm': act({
    summary:
      'Adds a bead form of the workshop’s own (without id) or saves one; a reference’s id replaces it.',
    input: z.strictObject({ form: beadForm.partial({ id: true }) }),
    output: z.strictObject({ id: entryId }),
    changes: FOLLOW,
  }),
  'tables.saveThread': act({
    summary:
      'Adds a thread of the workshop’s own (without id) or saves one; a reference’s id replaces it.',
    input: z.strictObject({ thread: beadThread.partial({ id: true }) }),
    output: z.strictObject({ id: entryId }),
    changes: FOLLOW,
  }),
  'tables.removeForm': act({
    summary:
      'Removes a bead form of the workshop’s own; refused while anything would be without it.',
    input: z.strictObject({ id: entryId }),
    output: s.nothing,
    changes: FOLLOW,
  }),
  'tables.removeThread': act({
    summary: 'Removes a thread of the workshop’s own; refused while anything would be without it.',
    input: z.strictObject({ id: entryId }),
    output: s.nothing,
    changes: FOLLOW,
  }),
  'tables.take': act({
    summary:
      'Takes in a table of bead forms and threads as `tables.own` gives it, all or none; known ids are replaced.',
    input: z.strictObject({
      forms: z.array(beadForm).max(1_000).optional(),
      threads: z.array(beadThread).max(1_000).optional(),
    }),
    output: z.strictObject({
      added: z.number().int(),
      replaced: z.number().int(),
      same: z.number().int(),
    }),
    changes: FOLLOW,
  }),
} as const
