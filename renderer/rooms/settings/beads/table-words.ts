import type { BeadFamily } from '../../../../shared-core/beads/bead-form.ts'
import type { ThreadConstruction } from '../../../../shared-core/beads/thread.ts'
import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import { formatNumber } from '../../../../shared-core/units/format-number.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import type { Spread } from '../../../../shared-core/units/spread.ts'
import type { Format } from '../../../app/format.ts'

export type FormEntry = CallOutput<'tables.list'>['forms'][number]
export type ThreadEntry = CallOutput<'tables.list'>['threads'][number]

export const familyWords: Readonly<Record<BeadFamily, string>> = {
  cylinder: 'Cylinder',
  rocaille: 'Rocaille',
  bugle: 'Bugle',
  drop: 'Drop',
  'two-hole': 'Two-hole',
  cube: 'Cube',
  faceted: 'Faceted',
}

export const constructionWords: Readonly<Record<ThreadConstruction, string>> = {
  braided: 'Braided gel-spun',
  twisted: 'Twisted',
  flat: 'Flat',
  bonded: 'Bonded',
}

const evidenceWords: Readonly<Record<FormEntry['evidence'], string>> = {
  'several-sources': 'several sources',
  'one-source': 'one source',
  computed: 'size and glass',
  'trade-knowledge': 'trade knowledge',
  own: 'your own figures',
}

/** What a form's figures rest on. */
export function restsOn({ evidence, diameterMm }: FormEntry): string {
  if (evidence !== 'own') return evidenceWords[evidence]
  return diameterMm.basis === 'measured' ? 'your own, measured' : 'your own, estimated'
}

/** Where an entry stands, when it is not simply the reference's. */
export function originWords(origin: FormEntry['origin']): string | undefined {
  if (origin === 'own') return 'Yours'
  return origin === 'replaces' ? 'Yours, in place of the table’s' : undefined
}

/** `1,6`: no finer than a bead is measured, a thousandth below 1 and a tenth from 10 up. */
export function figure(value: number, decimal: DecimalMark): string {
  return formatNumber(String(Number(value.toFixed(value < 1 ? 3 : value < 10 ? 2 : 1))), decimal)
}

/** `1,55 to 1,65`; empty where there is no range. */
export function rangeWords({ low, high }: Spread, decimal: DecimalMark): string {
  return low === high ? '' : `${figure(low, decimal)} to ${figure(high, decimal)}`
}

/** `2 materials` and `1 design`, a line each; nothing where nothing names it. */
export function usesWords(
  { materials, designs }: FormEntry['uses'],
  format: Format,
): readonly string[] {
  return [
    materials === 0 ? '' : format.counted(materials, 'material'),
    designs === 0 ? '' : format.counted(designs, 'design'),
  ].filter((word) => word !== '')
}
