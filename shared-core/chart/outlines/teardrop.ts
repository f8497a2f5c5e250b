import type { Profile } from './profile.ts'

/** Greatest value of 2 h sqrt(1 - h), at h = 2/3. */
const PEAK = (4 / 3) * Math.sqrt(1 / 3)

/**
 * A tip at the top, round below: the teardrop curve x = sin t sin(t / 2), y = cos t, which at height h
 * is 2 h sqrt(1 - h) wide, widest two thirds of the way down.
 */
export const teardrop: Profile = {
  widthAt: (height) => (2 * height * Math.sqrt(Math.max(0, 1 - height))) / PEAK,
  widest: 2 / 3,
}
