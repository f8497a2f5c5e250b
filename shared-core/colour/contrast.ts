import { LIGHT_OF_BYTE, type Rgb8 } from './srgb.ts'

/** Relative luminance of an sRGB colour, 0 to 1. @source WCAG 2.2, relative luminance. */
export function relativeLuminance({ r, g, b }: Rgb8): number {
  const light = (byte: number) => LIGHT_OF_BYTE[byte] ?? Number.NaN
  return 0.2126 * light(r) + 0.7152 * light(g) + 0.0722 * light(b)
}

/**
 * Contrast ratio of two colours, 1 to 21, unrounded: 2.995 must not pass as 3.
 *
 * @source WCAG 2.2, contrast ratio: (L1 + 0.05) / (L2 + 0.05), the lighter first.
 */
export function contrastRatio(x: Rgb8, y: Rgb8): number {
  const a = relativeLuminance(x)
  const b = relativeLuminance(y)
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)
}

/** Least contrast asked for by WCAG 2.2: ordinary text (AA, AAA), large text and controls (AA). */
export const CONTRAST_NEEDED = { text: 4.5, textEnhanced: 7, largeOrControl: 3 } as const

const BLACK: Rgb8 = { r: 0, g: 0, b: 0 }
const WHITE: Rgb8 = { r: 255, g: 255, b: 255 }

/** Black or white, whichever reads better on this colour (always 4.58 or better). */
export function inkOn(background: Rgb8): Rgb8 {
  return contrastRatio(BLACK, background) >= contrastRatio(WHITE, background) ? BLACK : WHITE
}
