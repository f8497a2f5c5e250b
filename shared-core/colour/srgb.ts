/** An sRGB colour, three bytes. */
export type Rgb8 = Readonly<{ r: number; g: number; b: number }>

/**
 * Light of each sRGB byte, 0 to 1: index 0 to 255.
 *
 * @source IEC 61966-2-1:1999, v / 12.92 up to 0.04045, else ((v + 0.055) / 1.055)^2.4.
 */
export const LIGHT_OF_BYTE: Float64Array = Float64Array.from({ length: 256 }, (_, byte) => {
  const v = byte / 255
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
})

/** The sRGB byte for an amount of light; light beyond 0 to 1 is clipped. */
export function byteOfLight(light: number): number {
  const v = light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055
  return Math.round(255 * Math.min(1, Math.max(0, v)))
}

/** The colour written as `#RRGGBB` (case does not matter), or `undefined` for any other text. */
export function rgbOfHex(hex: string): Rgb8 | undefined {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) return undefined
  const value = Number.parseInt(hex.slice(1), 16)
  return { r: value >> 16, g: (value >> 8) & 255, b: value & 255 }
}

/** The colour as `#rrggbb`. */
export function hexOfRgb({ r, g, b }: Rgb8): string {
  return `#${((r << 16) | (g << 8) | b).toString(16).padStart(6, '0')}`
}
