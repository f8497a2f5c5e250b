import type { Profile } from './profile.ts'

/** Two parabolic arcs that meet in a tip at each end. */
export const leaf: Profile = { widthAt: (height) => 4 * height * (1 - height), widest: 0.5 }
