import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Spread } from '../../../../shared-core/units/spread.ts'
import { scaleSpread } from '../../../../shared-core/units/spread-arithmetic.ts'
import type { PlainReading } from '../reading/plain-reading.ts'

/** Wearers feel an earring from here on, mg. */
const DRAGS_FROM_MG = 10_000

/** What one piece weighs as it is worn: half of a pair, else the unit; `drags` for an earring too heavy for the ear. */
export function pieceMass(
  { unitMassMg }: Pick<PlainReading, 'unitMassMg'>,
  { parts, extras, unitName }: Pick<DesignBody, 'parts' | 'extras' | 'unitName'>,
): Readonly<{ massMg: Spread; isHalf: boolean; drags: boolean }> {
  const panels = parts.filter((part) => part.kind === 'panel')
  const isHalf = panels.length > 0 && panels.every(({ copies }) => copies === 2)
  const massMg = isHalf ? scaleSpread(unitMassMg, 0.5) : unitMassMg
  const isEarring =
    isHalf && (unitName === 'pair' || extras.some(({ name }) => /\bear\b/i.test(name)))
  return { massMg, isHalf, drags: isEarring && massMg.value > DRAGS_FROM_MG }
}
