const DARK_INK = '#10272e'
const LIGHT_INK = '#ffffff'

/** A colour for each number of passes, light to dark; the last stands for all beyond. Index 0 is no pass. */
export const passHexes = [
  '#f2efe6',
  '#dbe8df',
  '#aed3cd',
  '#74b3b6',
  '#2f7c8a',
  '#24687a',
  '#184a5c',
  '#152f45',
  '#2a1438',
] as const

/** What a number of passes is written in on its colour. */
export function passInk(passes: number): string {
  return passes <= 3 ? DARK_INK : LIGHT_INK
}

/** How a hole stands: how it is drawn and what it is called. */
export const fillLevels = [
  { level: 0, hex: '#b3d3c8', ink: DARK_INK, name: 'Free', says: 'room for two more' },
  {
    level: 1,
    hex: '#e2a537',
    ink: DARK_INK,
    name: 'Tight',
    says: 'room for one or none',
  },
  { level: 2, hex: '#7d1a2a', ink: LIGHT_INK, name: 'Full', says: 'the last passes stick' },
] as const
