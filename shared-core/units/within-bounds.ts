import { type ParseResult, quoted, refuseText } from './parse-options.ts'

/** What a place holds, in the whole units of its value, and how such a number is written. */
export type Bounds<T> = Readonly<{
  least: number
  most: number
  /** The value as the number that is compared; `Number` where the value is one. */
  of: (value: T) => number
  write: (value: number) => string
}>

/**
 * A reading that must also lie between two bounds, both included, in the unit of `of`.
 *
 * Refusals: those of the reading itself, `too-little` and `too-much`; they quote what was typed and name
 * the bound that it passes.
 */
export function withinBounds<T>(
  read: ParseResult<T>,
  text: string,
  { least, most, of, write }: Bounds<T>,
): ParseResult<T> {
  if (!read.ok) return read
  const value = of(read.value.value)
  if (value < least) {
    return refuseText(
      {},
      {
        code: 'too-little',
        message: `${quoted(text.trim())} is too little here.`,
        next: `Type ${write(least)} or more.`,
      },
    )
  }
  if (value <= most) return read
  return refuseText(
    {},
    {
      code: 'too-much',
      message: `${quoted(text.trim())} is too much here.`,
      next: `Type ${write(most)} at most.`,
    },
  )
}
