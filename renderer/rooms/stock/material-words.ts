import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { BadgeTone } from '../../ui/badge.tsx'
import type { SwatchLook } from '../../ui/swatch.tsx'

export type MaterialRow = CallOutput<'materials.list'>['materials'][number]

/** What a kind of material is called. */
export const kindWords: Readonly<Record<MaterialRow['kind'], string>> = {
  bead: 'Beads',
  thread: 'Thread',
  finding: 'Findings',
  packaging: 'Packaging',
}

/** A material in a lot that nobody has weighed, measured or counted yet. */
export const unknownWords: Readonly<Record<MaterialRow['unit'], string>> = {
  mg: 'Not weighed',
  mm: 'Not measured',
  piece: 'Not counted',
}

/** An alert in a word, with the tone of its shape. What is not known yet is named by its unit. */
export const alertWords: Readonly<Record<MaterialRow['alert'], readonly [BadgeTone, string]>> = {
  none: ['good', 'Enough'],
  low: ['attention', 'Low'],
  out: ['bad', 'None left'],
  short: ['bad', 'Short for orders'],
  unweighed: ['quiet', unknownWords.mg],
}

/** How a material is drawn beside its name; null for what has no colour. */
export function lookOf({ colourHex, finish, formId }: MaterialRow): SwatchLook | null {
  if (colourHex === null) return null
  const family = formId?.startsWith('rocaille') ? 'rocaille' : 'cylinder'
  return { hex: colourHex, finish: finish ?? 'opaque', family }
}
