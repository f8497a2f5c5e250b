import { type Extent, parseExtent } from '../../../../shared-core/chart/outlines/parse-extent.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'

/** What a text of size says, if it can be read. */
export function extentOf(text: string, decimal: DecimalMark): Extent | undefined {
  const read = parseExtent(text, { decimal })
  return read.ok ? read.value.value : undefined
}
