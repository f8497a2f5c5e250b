import type { Profile } from './profile.ts'

/** Straight sides from a tip at the top to the full width at the bottom. */
export const triangle: Profile = { widthAt: (height) => height, widest: 1 }
