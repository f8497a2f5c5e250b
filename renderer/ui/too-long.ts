import { formatCount } from '../../shared-core/units/format-number.ts'

/** Says that a text has more characters than its place holds. Nothing pasted is ever cut off in silence. */
export function tooLong(text: string, longest: number | undefined): string | undefined {
  if (longest === undefined || text.trim().length <= longest) return undefined
  const [found, most] = [formatCount(text.trim().length), formatCount(longest)]
  return `That is ${found} characters. Shorten it to ${most} at most.`
}
