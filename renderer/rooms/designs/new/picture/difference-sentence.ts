import { differenceWords } from '../../../../../shared-core/colour/difference-words.ts'
import type { PictureChart } from '../../../../../shared-core/colour/picture/picture-to-chart.ts'
import { formatNumber } from '../../../../../shared-core/units/format-number.ts'
import { roundHalfAway } from '../../../../../shared-core/units/rounding.ts'
import type { Format } from '../../../../app/format.ts'

/** The sentence that tells a made picture's differences. */
export function differenceSentence(
  { meanDeltaE, worstDeltaE, recoloured }: PictureChart,
  format: Pick<Format, 'decimal' | 'counted'>,
): string {
  const write = (deltaE: number) =>
    formatNumber(roundHalfAway(String(Number(deltaE.toFixed(6))), 1), format.decimal)
  const strays =
    recoloured === 0 ? '' : ` ${format.counted(recoloured, 'bead')} took the colour beside it.`
  return `Mean colour difference ${write(meanDeltaE)} (CIEDE2000): ${differenceWords(meanDeltaE)}. The bead farthest off: ${write(worstDeltaE)}.${strays}`
}
