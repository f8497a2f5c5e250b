import { labOfHex } from './lab.ts'

/** Hues in Lab from 0 to 360 degrees: each name up to its bound. */
const HUES = [
  [22, 'rose'],
  [52, 'red'],
  [80, 'orange'],
  [112, 'yellow'],
  [170, 'green'],
  [215, 'teal'],
  [300, 'blue'],
  [340, 'violet'],
  [360, 'rose'],
] as const

/** Below this chroma a colour is a grey. */
const GREY = 8

/**
 * A plain name of a colour: `dark blue`, `light grey`, `brown`.
 *
 * From lightness, chroma and hue in Lab; neighbours may share a name.
 *
 * @param hex - `#rrggbb`.
 * @source Bounds chosen by us, by eye, on the hues of sRGB.
 */
export function colourName(hex: string): string {
  const { l, a, b } = labOfHex(hex)
  const chroma = Math.hypot(a, b)
  if (chroma < GREY) return greyName(l)
  const hue = (Math.atan2(b, a) * 180) / Math.PI
  const name = hueName(hue < 0 ? hue + 360 : hue)
  const isWarm = name === 'red' || name === 'orange' || name === 'yellow'
  if (isWarm && chroma < 55 && l < 55) return l < 30 ? 'dark brown' : 'brown'
  if (isWarm && chroma < 30) return l > 75 ? 'cream' : 'sand'
  return `${shade(l)}${name}`
}

/** Names for several colours, each told apart: the second blue is `blue 2`. */
export function colourNames(hexes: readonly string[]): readonly string[] {
  const met = new Map<string, number>()
  return hexes.map((hex) => {
    const name = colourName(hex)
    const number = (met.get(name) ?? 0) + 1
    met.set(name, number)
    return number === 1 ? name : `${name} ${number}`
  })
}

function hueName(hue: number): string {
  return HUES.find(([to]) => hue < to)?.[1] ?? 'rose'
}

function greyName(l: number): string {
  if (l < 12) return 'black'
  return l > 94 ? 'white' : `${shade(l)}grey`
}

function shade(l: number): string {
  if (l < 35) return 'dark '
  return l > 75 ? 'light ' : ''
}
