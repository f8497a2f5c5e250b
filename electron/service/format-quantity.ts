import { formatThread } from '../../shared-core/units/format-length.ts'
import { formatMass } from '../../shared-core/units/format-mass.ts'
import { formatCount } from '../../shared-core/units/format-number.ts'
import { threadMm } from '../../shared-core/units/length.ts'
import { massMg } from '../../shared-core/units/mass.ts'
import type { DecimalMark } from '../../shared-core/units/parse-options.ts'

/** A quantity of a material as people read it: `18.45 g`, `114 m`, `48 pieces`. */
export function formatQuantity(
  quantity: number,
  unit: 'mg' | 'mm' | 'piece',
  decimal: DecimalMark,
): string {
  switch (unit) {
    case 'mg':
      return formatMass(massMg(quantity), decimal)
    case 'mm':
      return formatThread(threadMm(quantity), { decimal })
    case 'piece':
      return `${formatCount(quantity)} ${quantity === 1 ? 'piece' : 'pieces'}`
  }
}
