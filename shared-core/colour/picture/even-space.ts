import type { Lab } from '../lab.ts'

const POW_25_7 = 25 ** 7

/**
 * Writes Lab colours into a space whose straight distances follow CIEDE2000 closely, three numbers a
 * colour, from `from` up to `to` (colours, not numbers).
 *
 * Lightness and chroma are compressed by the integral of CIEDE2000's own weights, S_L about
 * 1 + 0.015 |L - 50| and S_C = 1 + 0.045 C; hue angles stay. Straight distance finds groups and
 * likely neighbours quickly; what is reported is always CIEDE2000 itself.
 *
 * @source The idea of DIN 99 (DIN 6176), with the weights of Sharma, Wu and Dalal 2005.
 */
export function writeEven(lab: Float64Array, even: Float64Array, from: number, to: number): void {
  for (let i = 3 * from; i < 3 * to; i += 3) {
    const fromGrey = (lab[i] as number) - 50
    const b = lab[i + 2] as number
    const a = stretchedA(lab[i + 1] as number, b)
    const chroma = Math.sqrt(a * a + b * b)
    const shrink = chroma > 1e-9 ? Math.log(1 + 0.045 * chroma) / (0.045 * chroma) : 1
    const lightness = Math.log(1 + 0.015 * Math.abs(fromGrey)) / 0.015
    even[i] = fromGrey < 0 ? -lightness : lightness
    even[i + 1] = a * shrink
    even[i + 2] = b * shrink
  }
}

/** CIEDE2000's stretched a: half as much again near grey, where reds and greens show more. */
function stretchedA(a: number, b: number): number {
  const squared = a * a + b * b
  const seventh = squared * squared * squared * Math.sqrt(squared)
  return a * (1.5 - 0.5 * Math.sqrt(seventh / (seventh + POW_25_7)))
}

/** The Lab colour at a place of the even space: undoes `writeEven`. */
export function labOfEven(lightness: number, evenA: number, evenB: number): Lab {
  const fromGrey = (Math.exp(0.015 * Math.abs(lightness)) - 1) / 0.015
  const even = Math.hypot(evenA, evenB)
  const grow = even > 1e-9 ? (Math.exp(0.045 * even) - 1) / (0.045 * even) : 1
  const b = evenB * grow
  return { l: 50 + (lightness < 0 ? -fromGrey : fromGrey), a: unstretchedA(evenA * grow, b), b }
}

/** The a that `stretchedA` turns into `wanted`, by halving: the stretch lies between 1 and 1.5. */
function unstretchedA(wanted: number, b: number): number {
  let low = Math.abs(wanted) / 1.5
  let high = Math.abs(wanted)
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2
    if (stretchedA(middle, b) < Math.abs(wanted)) low = middle
    else high = middle
  }
  return wanted < 0 ? -high : high
}
