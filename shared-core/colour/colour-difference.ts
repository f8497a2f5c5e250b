/** How far apart two colours are to the eye. */
export type ColourDifference = 'unseen' | 'barely' | 'near' | 'seen' | 'other'

/** The greatest CIEDE2000 that still counts as each, from the least up. */
const STEPS: readonly (readonly [most: number, is: ColourDifference])[] = [
  [1, 'unseen'],
  [2.3, 'barely'],
  [5, 'near'],
  [10, 'seen'],
]

/**
 * A colour difference in a word: below 1 nobody sees it, up to 2.3 only side by side, up to 5 a
 * near match, up to 10 seen at a glance, beyond that another colour.
 *
 * @param deltaE - CIEDE2000, 0 or more.
 * @source A just noticeable difference of 2.3 is the figure of Mahy, Van Eycken and Oosterlinck
 *   (1994); 1, 5 and 10 are the customary steps of print and paint.
 */
export function colourDifference(deltaE: number): ColourDifference {
  return STEPS.find(([most]) => deltaE <= most)?.[1] ?? 'other'
}
