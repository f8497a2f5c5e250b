import { inkOn } from '../../../../shared-core/colour/contrast.ts'
import { hexOfRgb, type Rgb8, rgbOfHex } from '../../../../shared-core/colour/srgb.ts'

const GREY: Rgb8 = { r: 136, g: 136, b: 136 }

const rgb = (hex: string): Rgb8 => rgbOfHex(hex) ?? GREY

/** A colour some of the way (0 to 1) to another. */
export function mixed(from: string, to: string, share: number): string {
  const [a, b] = [rgb(from), rgb(to)]
  const at = (x: number, y: number) => Math.round(x + (y - x) * share)
  return hexOfRgb({ r: at(a.r, b.r), g: at(a.g, b.g), b: at(a.b, b.b) })
}

/** Black or white, whichever reads better on a colour. */
export function inkFor(hex: string): string {
  return hexOfRgb(inkOn(rgb(hex)))
}
