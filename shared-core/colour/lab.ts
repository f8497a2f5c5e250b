import { byteOfLight, LIGHT_OF_BYTE, type Rgb8, rgbOfHex } from './srgb.ts'

/** A CIELAB colour under D65, 2 degree observer: `l` 0 to 100, `a` and `b` about -128 to 127. */
export type Lab = Readonly<{ l: number; a: number; b: number }>

// White of CIE D65 from its chromaticity x 0.3127, y 0.3290.
const WHITE_X = 0.3127 / 0.329
const WHITE_Z = (1 - 0.3127 - 0.329) / 0.329
const EPSILON = 216 / 24389
const KAPPA = 24389 / 27

function forward(t: number): number {
  return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116
}

function backward(f: number): number {
  const cubed = f * f * f
  return cubed > EPSILON ? cubed : (116 * f - 16) / KAPPA
}

/**
 * Writes the Lab of linear light (r, g, b from 0 to 1) into `out` at `offset`: L, a, b.
 *
 * Positional, and into an array, because pictures call it for every cell.
 *
 * @source Matrix of sRGB under D65 from its primaries (IEC 61966-2-1); CIE 15, Lab with 216/24389
 *   and 24389/27.
 */
export function writeLabOfLight(
  r: number,
  g: number,
  b: number,
  out: Float64Array,
  offset: number,
): void {
  const x = 0.4123907992659593 * r + 0.357584339383878 * g + 0.1804807884018343 * b
  const y = 0.2126390058715102 * r + 0.715168678767756 * g + 0.0721923153607337 * b
  const z = 0.0193308187155918 * r + 0.119194779794626 * g + 0.9505321522496607 * b
  const fy = forward(y)
  out[offset] = 116 * fy - 16
  out[offset + 1] = 500 * (forward(x / WHITE_X) - fy)
  out[offset + 2] = 200 * (fy - forward(z / WHITE_Z))
}

/** The Lab of an sRGB colour. */
export function labOfRgb({ r, g, b }: Rgb8): Lab {
  const out = new Float64Array(3)
  const light = (byte: number) => LIGHT_OF_BYTE[byte] ?? Number.NaN
  writeLabOfLight(light(r), light(g), light(b), out, 0)
  const [l = 0, a = 0, labB = 0] = out
  return { l, a, b: labB }
}

/** The Lab of `#RRGGBB`. @throws RangeError for any other text: a bug, because colours are parsed first. */
export function labOfHex(hex: string): Lab {
  const rgb = rgbOfHex(hex)
  if (rgb === undefined) throw new RangeError(`labOfHex: expected #RRGGBB, got ${hex}`)
  return labOfRgb(rgb)
}

/** Linear light of a Lab colour; amounts outside 0 to 1 lie beyond sRGB. */
export function lightOfLab({ l, a, b }: Lab): Readonly<{ r: number; g: number; b: number }> {
  const fy = (l + 16) / 116
  const x = WHITE_X * backward(fy + a / 500)
  const y = backward(fy)
  const z = WHITE_Z * backward(fy - b / 200)
  return {
    r: 3.2409699419045226 * x - 1.537383177570094 * y - 0.4986107602930034 * z,
    g: -0.9692436362808796 * x + 1.8759675015077202 * y + 0.0415550574071756 * z,
    b: 0.0556300796969936 * x - 0.2039769588889765 * y + 1.0569715142428786 * z,
  }
}

/** The nearest sRGB colour by clipping each primary: exact for colours that sRGB can show. */
export function rgbOfLab(lab: Lab): Rgb8 {
  const light = lightOfLab(lab)
  return { r: byteOfLight(light.r), g: byteOfLight(light.g), b: byteOfLight(light.b) }
}
