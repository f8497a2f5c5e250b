import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import type { DecimalMark } from '../units/parse-options.ts'
import type { Spread } from '../units/spread.ts'
import { withMark } from '../units/with-mark.ts'
import type { BeadForm } from './bead-form.ts'
import type { Needle, Thread } from './thread.ts'

/** Bead forms, threads and needles known to a workshop. */
export type BeadTables = Readonly<{
  forms: readonly BeadForm[]
  threads: readonly Thread[]
  needles: readonly Needle[]
}>

/** What a workshop adds; an entry with a known id (or needle size) replaces the reference one. */
export type UserTables = Readonly<Partial<BeadTables>>

type Limits = readonly [min: number, max: number, unit: string]

const FORM_LIMITS = {
  diameterMm: [0.5, 60, 'mm'],
  lengthMm: [0.3, 60, 'mm'],
  holeMm: [0.1, 20, 'mm'],
  beadsPerGram: [0.01, 5000, 'beads per gram'],
  cullRate: [0, 0.95, '(a share of 1)'],
} as const satisfies Readonly<Record<string, Limits>>

const THREAD_LIMITS: Limits = [0.02, 3, 'mm']
const TEX_LIMITS: Limits = [1, 5000, 'tex']
const NEEDLE_LIMITS: Limits = [0.1, 2, 'mm']

function outOfRange(
  field: string,
  spread: Spread,
  [min, max, unit]: Limits,
  decimal?: DecimalMark,
): Refusal[] {
  const { low, value, high } = spread
  if (min <= low && low <= value && value <= high && high <= max) return []
  return [
    {
      code: 'bead-table-out-of-range',
      field,
      message: withMark(`The figure ${value} (${low} to ${high}) cannot be used.`, decimal),
      next: withMark(
        `Give a range from low to high between ${min} and ${max} ${unit}, with the figure inside it.`,
        decimal,
      ),
    },
  ]
}

function missingName(field: string, text: string): Refusal[] {
  if (text.trim() !== '') return []
  const message = 'An entry has no name.'
  return [{ code: 'bead-table-no-name', field, message, next: 'Give it a short name of your own.' }]
}

/**
 * Why a bead form cannot be used: lengths in mm, beads per gram, culls a share of 1.
 *
 * @param at how the refusals' fields begin, such as `forms.0`
 * @param decimal the mark that their sentences write figures with
 * @returns nothing when it can; else `bead-table-no-name`, `bead-table-out-of-range` (a spread out
 *   of order or outside the limits), `bead-hole-too-wide`
 */
export function formRefusals(
  form: BeadForm,
  at: string,
  decimal?: DecimalMark,
): readonly Refusal[] {
  const ranges = (Object.keys(FORM_LIMITS) as (keyof typeof FORM_LIMITS)[]).flatMap((key) =>
    outOfRange(`${at}.${key}`, form[key], FORM_LIMITS[key], decimal),
  )
  const holeFits = form.holeMm.value < form.diameterMm.value
  const hole: Refusal[] = holeFits
    ? []
    : [
        {
          code: 'bead-hole-too-wide',
          field: `${at}.holeMm`,
          message: withMark(
            `A hole of ${form.holeMm.value} mm does not fit in a bead of ${form.diameterMm.value} mm.`,
            decimal,
          ),
          next: 'Measure the bead across its hole, and the hole itself, again.',
        },
      ]
  return [
    ...missingName(`${at}.id`, form.id),
    ...missingName(`${at}.name`, form.name),
    ...ranges,
    ...hole,
  ]
}

/**
 * Why a thread cannot be used: diameter in mm, tex in grams per 1000 m.
 *
 * @param at how the refusals' fields begin, such as `threads.0`
 * @param decimal the mark that their sentences write figures with
 * @returns nothing when it can; else `bead-table-no-name`, `bead-table-out-of-range`
 */
export function threadRefusals(
  thread: Thread,
  at: string,
  decimal?: DecimalMark,
): readonly Refusal[] {
  const { tex } = thread
  const texSpread =
    tex === undefined ? undefined : { value: tex, low: tex, high: tex, basis: 'exact' as const }
  return [
    ...missingName(`${at}.id`, thread.id),
    ...missingName(`${at}.name`, thread.name),
    ...outOfRange(`${at}.diameterMm`, thread.diameterMm, THREAD_LIMITS, decimal),
    ...(texSpread === undefined ? [] : outOfRange(`${at}.tex`, texSpread, TEX_LIMITS, decimal)),
  ]
}

function needleRefusals(needle: Needle, index: number): Refusal[] {
  return [
    ...missingName(`needles.${index}.size`, needle.size),
    ...outOfRange(`needles.${index}.wireMm`, needle.wireMm, NEEDLE_LIMITS),
  ]
}

function merged<T>(
  known: readonly T[],
  added: readonly T[],
  key: (entry: T) => string,
): readonly T[] {
  const byKey = new Map(known.map((entry) => [key(entry), entry]))
  for (const entry of added) byKey.set(key(entry), entry)
  return [...byKey.values()]
}

/**
 * The tables with a workshop's own forms, threads and needles added; a known id is replaced in place.
 *
 * @returns the merged tables, or every refusal found: `bead-table-out-of-range` (a spread out of
 *   order or outside the limits), `bead-table-no-name`, `bead-hole-too-wide`.
 */
export function withUserForms(
  tables: BeadTables,
  extra: UserTables,
): Result<BeadTables, readonly Refusal[]> {
  const { forms = [], threads = [], needles = [] } = extra
  const refusals = [
    ...forms.flatMap((form, at) => formRefusals(form, `forms.${at}`)),
    ...threads.flatMap((thread, at) => threadRefusals(thread, `threads.${at}`)),
    ...needles.flatMap(needleRefusals),
  ]
  if (refusals.length > 0) return err(refusals)
  return ok({
    forms: merged(tables.forms, forms, (form) => form.id),
    threads: merged(tables.threads, threads, (thread) => thread.id),
    needles: merged(tables.needles, needles, (needle) => needle.size),
  })
}
