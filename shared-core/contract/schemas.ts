import { z } from 'zod'

/** Shapes that many calls share. Names carry the unit, because JSON carries no types. */

export const id = z.string().regex(/^[a-z]+_[0-9a-z]{6,32}$/, 'expected an id such as mat_3f9k2m7q')
export const name = z.string().trim().min(1, 'expected a name').max(120)
export const note = z.string().max(2_000)
export const code = z.string().trim().min(1, 'expected a code').max(40)
export const date = z.iso.date('expected a date such as 2026-12-04')
export const atMs = z.number().int()
export const colourHex = z.string().regex(/^#[0-9a-f]{6}$/, 'expected a colour such as #4b5a63')
export const currency = z.string().regex(/^[A-Z]{3}$/, 'expected a currency code such as EUR')
/** Whole minor units of the workshop's currency; 10^12 is ten billion of most currencies. */
export const amountMinor = z.number().int().min(-1_000_000_000_000).max(1_000_000_000_000)
export const priceMinor = amountMinor.min(0)
/** Whole mg, mm or pieces, by the material's unit. */
export const quantity = z.number().int().min(0).max(1_000_000_000_000)
export const signedQuantity = z.number().int().min(-1_000_000_000_000).max(1_000_000_000_000)
export const units = z.number().int().min(1).max(10_000)
/** An exact decimal as text, in percent: `6.5`. */
export const percent = z
  .string()
  .regex(/^\d{1,3}(\.\d{1,6})?$/, 'expected a percentage such as 6.5')
  .refine((text) => Number(text) <= 100, 'expected at most 100')

export const unit = z.enum(['mg', 'mm', 'piece'])
export const basis = z.enum(['exact', 'measured', 'estimated'])
export const spread = z.strictObject({
  value: z.number(),
  low: z.number(),
  high: z.number(),
  basis,
})
export const finish = z.enum([
  'opaque',
  'matte',
  'gloss',
  'transparent',
  'lined',
  'metallic',
  'iridescent',
])
/** The bytes of a file a person chose, base64. 48 MiB of base64 hold 36 MiB of file. */
export const fileBytes = z.strictObject({
  fileName: z.string().min(1).max(255),
  base64: z.base64().max(48 * 1024 * 1024),
})
/** A document made for the user: name to suggest, bytes, and how many pages it has. */
export const madeFile = z.strictObject({
  fileName: z.string(),
  mediaType: z.string(),
  base64: z.base64(),
  pages: z.number().int().min(1),
})
export const refusal = z.strictObject({
  code: z.string(),
  message: z.string(),
  next: z.string(),
  field: z.string().exactOptional(),
  line: z.number().int().exactOptional(),
})
export const nothing = z.strictObject({})
