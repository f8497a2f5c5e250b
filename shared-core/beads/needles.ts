import { estimated } from '../units/spread.ts'
import type { Needle } from './thread.ts'

/**
 * The English beading needles by size; wire diameter in mm, `estimated`.
 *
 * @source Size 10 found as 0.46 mm; the finer ones trade knowledge (about 0.04 mm apart a size).
 */
export const needles: readonly Needle[] = [
  { size: '10', wireMm: estimated(0.45, 0.46, 0.46) },
  { size: '11', wireMm: estimated(0.4, 0.42, 0.43) },
  { size: '12', wireMm: estimated(0.35, 0.36, 0.38) },
  { size: '13', wireMm: estimated(0.3, 0.32, 0.34) },
  { size: '15', wireMm: estimated(0.25, 0.27, 0.28) },
]
