import type { Profile } from './profile.ts'

/** As wide everywhere. */
export const band: Profile = { widthAt: () => 1, widest: 0.5 }
