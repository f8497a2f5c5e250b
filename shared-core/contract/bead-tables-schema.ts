import { z } from 'zod'
import * as s from './schemas.ts'

const tableName = z.string().trim().min(1, 'expected a name').max(60)

/** A bead form as a workshop writes it down; the limits of its figures are `withUserForms`'s. */
export const beadForm = z.strictObject({
  id: tableName,
  name: tableName,
  family: z.enum(['cylinder', 'rocaille', 'bugle', 'drop', 'two-hole', 'cube', 'faceted']),
  sizeLabel: z.string().max(20),
  diameterMm: s.spread,
  lengthMm: s.spread,
  holeMm: s.spread,
  beadsPerGram: s.spread,
  cullRate: s.spread,
})

/** A thread as a workshop writes it down. */
export const beadThread = z.strictObject({
  id: tableName,
  name: tableName,
  construction: z.enum(['braided', 'twisted', 'flat', 'bonded']),
  diameterMm: s.spread,
  tex: z.number().exactOptional(),
})

/** A needle by its trade size. */
export const beadNeedle = z.strictObject({
  size: z.string().trim().min(1).max(20),
  wireMm: s.spread,
})

/** What a caller adds to the reference tables; an entry with a known id replaces the reference one. */
export const ownTables = z.strictObject({
  forms: z.array(beadForm).max(1_000).exactOptional(),
  threads: z.array(beadThread).max(1_000).exactOptional(),
  needles: z.array(beadNeedle).max(1_000).exactOptional(),
})

/** A weighing of counted beads: gross and tare in mg, the scale's step in mg. */
export const countedWeighing = z.strictObject({
  beads: z.number().int().min(1).max(1_000_000),
  grossMg: s.quantity,
  tareMg: s.quantity,
  digitMg: z.number().min(0).max(10_000),
})
