import { z } from 'zod'
import { query, step, type Topic } from './call.ts'
import * as s from './schemas.ts'

const entry = z.strictObject({
  id: s.id,
  atMs: s.atMs,
  call: z.string(),
  /** In the maker's words: `Made 4 pairs of Tidewrack`. */
  label: z.string(),
  state: z.enum(['done', 'undone']),
})

/** A step taken back may have changed anything that acts change. */
const EVERYTHING = [
  'workshop',
  'tables',
  'stock',
  'designs',
  'orders',
  'prices',
  'makes',
  'bench',
  'pieces',
  'history',
] as const satisfies readonly Topic[]

export const historyCalls = {
  'history.list': query({
    summary: 'The latest steps, newest first.',
    input: z.strictObject({ limit: z.number().int().min(1).max(500) }),
    output: z.strictObject({ entries: z.array(entry), canUndo: z.boolean(), canRedo: z.boolean() }),
    reads: ['history'],
  }),
  'history.undo': step({
    summary: 'Undoes the latest step that stands, by opposite movements and restored rows.',
    input: s.nothing,
    output: z.strictObject({ label: z.string() }),
    changes: EVERYTHING,
  }),
  'history.redo': step({
    summary: 'Does the latest undone step again.',
    input: s.nothing,
    output: z.strictObject({ label: z.string() }),
    changes: EVERYTHING,
  }),
} as const
