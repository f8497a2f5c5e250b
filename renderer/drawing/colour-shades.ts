import {
  useMode as addSpace,
  converter,
  formatHex,
  modeOklch,
  modeRgb,
  type Oklch,
} from 'culori/fn'

// Two colour spaces of the library's thirty: the others would be set up at every start.
addSpace(modeRgb)
addSpace(modeOklch)
const toOklch = converter('oklch')
const known = new Map<string, Oklch>()

function oklchOf(hex: string): Oklch {
  let colour = known.get(hex)
  if (colour === undefined) {
    colour = toOklch(hex) ?? { mode: 'oklch', l: 0.6, c: 0 }
    known.set(hex, colour)
  }
  return colour
}

/** A change of a colour in OKLCH: lightness added, chroma multiplied, hue turned (degrees). */
export type Shade = Readonly<{ l?: number; c?: number; h?: number }>

/**
 * A colour lightened, darkened or turned, as hex.
 *
 * Steps shrink near black and white, so that a black bead still has a lit side and a white one a shaded side.
 */
export function shade(hex: string, { l = 0, c = 1, h = 0 }: Shade): string {
  const { l: from, c: chroma, h: hue = 0 } = oklchOf(hex)
  // White comes out a hair above 1, and a root of less than nothing is no number.
  const room = Math.max(0, l > 0 ? 1 - from : from)
  const step = l * Math.min(1, room / 0.45) ** 0.6
  const lightness = Math.min(1, Math.max(0, from + step))
  return formatHex({ mode: 'oklch', l: lightness, c: chroma * c, h: hue + h })
}

/** A colour as `rgb(... / alpha)`. */
export function withAlpha(hex: string, alpha: number): string {
  const value = Number.parseInt(hex.slice(1), 16)
  return `rgb(${value >> 16} ${(value >> 8) & 255} ${value & 255} / ${alpha})`
}
