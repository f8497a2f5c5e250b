/** How much a mix of unlike colours is held against it: grain shows where partners differ. */
const GRAIN = 0.15

/**
 * The palette colour that, mixed with `base`, comes nearest to a wanted light, and its share.
 *
 * Light mixes in proportion to area, so the search is in linear light: for each partner the best
 * share of 0 to 1 is the foot of the wanted light on the line between the two.
 *
 * @param lights - r, g, b of each palette colour, 0 to 1, linear.
 * @param base - Index of the palette colour to mix with, usually the nearest.
 * @returns the partner (`base` itself when nothing is gained) and its share, 0 to 1.
 * @source Chosen by us.
 */
export function bestPartner(
  lights: Float64Array,
  base: number,
  wanted: Readonly<{ r: number; g: number; b: number }>,
): Readonly<{ partner: number; share: number }> {
  const baseR = lights[3 * base] as number
  const baseG = lights[3 * base + 1] as number
  const baseB = lights[3 * base + 2] as number
  const r = wanted.r - baseR
  const g = wanted.g - baseG
  const b = wanted.b - baseB
  let partner = base
  let share = 0
  let least = r * r + g * g + b * b
  for (let j = 0; 3 * j < lights.length; j++) {
    const dr = (lights[3 * j] as number) - baseR
    const dg = (lights[3 * j + 1] as number) - baseG
    const db = (lights[3 * j + 2] as number) - baseB
    const apart = dr * dr + dg * dg + db * db
    if (apart === 0) continue
    const part = Math.min(1, Math.max(0, (r * dr + g * dg + b * db) / apart))
    const off = (r - part * dr) ** 2 + (g - part * dg) ** 2 + (b - part * db) ** 2
    const score = off + GRAIN * part * (1 - part) * apart
    if (score < least) {
      least = score
      partner = j
      share = part
    }
  }
  return { partner, share }
}
