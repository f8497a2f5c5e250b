import type { Profile } from './profile.ts'

/** An ellipse. */
export const oval: Profile = {
  widthAt: (height) => Math.sqrt(Math.max(0, 1 - (2 * height - 1) ** 2)),
  widest: 0.5,
}
