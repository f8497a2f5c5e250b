import type { Spread } from '../../../shared-core/units/spread.ts'

/** Whether a figure lies within its own range. */
export const inOrder = ({ low, value, high }: Spread) => low <= value && value <= high
