import type { Refusal } from '../refusal.ts'
import { err, type Result } from '../result.ts'
import { withMark } from './with-mark.ts'

/** The sign between whole units and decimals. */
export type DecimalMark = '.' | ','

/** What every parser of typed text may be told. */
export type ParseOptions = Readonly<{
  /** The decimal mark this workshop or this file uses; without it `1,245` is refused as ambiguous. */
  decimal?: DecimalMark | undefined
  /** Whether values below zero are accepted; they are refused unless this is true. */
  allowNegative?: boolean | undefined
  /** What was typed, where a parser rewrites it before it asks another; quoted in the refusal. */
  typed?: string | undefined
  /** Named in the refusal. */
  field?: string | undefined
  /** Named in the refusal, counted from 1. */
  line?: number | undefined
}>

/** A value read from typed text, and the reading in plain words (`12.5 g`) for the screen to show. */
export type Parsed<T> = Readonly<{ value: T; understood: string }>

/** What a parser of typed text answers. */
export type ParseResult<T> = Result<Parsed<T>, Refusal>

/** A refusal of typed text that carries the field and line of `options`. */
export function refuseText(
  options: ParseOptions,
  refusal: Readonly<{ code: string; message: string; next: string }>,
): Readonly<{ ok: false; error: Refusal }> {
  const place = {
    ...(options.field === undefined ? {} : { field: options.field }),
    ...(options.line === undefined ? {} : { line: options.line }),
  }
  return err({ ...refusal, ...place }) as Readonly<{ ok: false; error: Refusal }>
}

/** A refusal of a typed figure, as `refuseText`; what to type next is shown with the workshop's decimal mark. */
export function refuseFigure(
  options: ParseOptions,
  refusal: Parameters<typeof refuseText>[1],
): ReturnType<typeof refuseText> {
  return refuseText(options, { ...refusal, next: withMark(refusal.next, options.decimal) })
}

/** The typed text in quotes, cut after 40 characters, for a sentence. */
export function quoted(text: string): string {
  const characters = [...text]
  return characters.length > 40 ? `“${characters.slice(0, 40).join('')}…”` : `“${text}”`
}
