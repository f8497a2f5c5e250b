import { ok } from '../../result.ts'
import { parseCount } from '../../units/parse-count.ts'
import { parseGeometry } from '../../units/parse-length.ts'
import {
  type ParseOptions,
  type ParseResult,
  quoted,
  refuseFigure,
} from '../../units/parse-options.ts'

/** How far a chart reaches one way: in beads (or rows), or in mm of finished work. */
export type Extent =
  | Readonly<{ kind: 'beads'; count: number }>
  | Readonly<{ kind: 'mm'; mm: number }>

/** A number that ends in a digit, and what may be said to count after it. */
const COUNTED = /^(.*\d)\s*(?:beads?|rows?|columns?|units?)?\.?$/i

/**
 * An extent from `40 mm`, `1,5 in`, `24 beads`, `12 rows`; a bare whole number counts beads.
 *
 * Refusals: those of `parseGeometry` and `parseCount`; `no-extent` for nothing at all, `not-whole` for
 * a part of a bead, with how a size in mm is typed.
 */
export function parseExtent(text: string, options: ParseOptions = {}): ParseResult<Extent> {
  const counted = COUNTED.exec(text.trim())?.[1]
  const read = counted === undefined ? readMm(text, options) : readBeads(counted, text, options)
  if (!read.ok || sizeOf(read.value.value) > 0) return read
  return refuseFigure(options, {
    code: 'no-extent',
    message: `${quoted(text)} leaves no room for a bead.`,
    next: EXAMPLES,
  })
}

const EXAMPLES = 'Type a size such as 40 mm or 1.5 in, or beads such as 24.'

function readMm(text: string, options: ParseOptions): ParseResult<Extent> {
  const mm = parseGeometry(text, options)
  if (!mm.ok) return mm
  return ok({ value: { kind: 'mm', mm: mm.value.value }, understood: mm.value.understood })
}

function readBeads(counted: string, text: string, options: ParseOptions): ParseResult<Extent> {
  const beads = parseCount(counted, { typed: text, ...options })
  if (!beads.ok) {
    return beads.error.code === 'not-whole' ? refuseFigure(options, partOfBead(text)) : beads
  }
  const { value: count, understood } = beads.value
  const noun = /row/i.test(text) ? 'row' : 'bead'
  return ok({
    value: { kind: 'beads', count },
    understood: `${understood} ${noun}${count === 1 ? '' : 's'}`,
  })
}

function partOfBead(text: string) {
  return {
    code: 'not-whole',
    message: `${quoted(text)} is not a whole number of beads.`,
    next: EXAMPLES,
  }
}

function sizeOf(extent: Extent): number {
  return extent.kind === 'beads' ? extent.count : extent.mm
}
