import type { Profile } from './profile.ts'

/** Straight sides, widest in the middle, a tip at each end. */
export const diamond: Profile = {
  widthAt: (height) => 1 - Math.abs(2 * height - 1),
  widest: 0.5,
}
