/**
 * A line of tides, high and low in turn, each half a cosine: the rule of a tide table.
 *
 * @returns An SVG path over a box of `width` by `height`, beginning at high water.
 */
export function tidePath({
  width,
  height,
  waves,
}: Readonly<{ width: number; height: number; waves: number }>): string {
  const steps = waves * 24
  const points = Array.from({ length: steps + 1 }, (_, step) => {
    const along = step / steps
    const level = (1 - Math.cos(along * waves * 2 * Math.PI)) / 2
    return `${(along * width).toFixed(1)} ${(2 + level * (height - 4)).toFixed(1)}`
  })
  return `M${points.join('L')}`
}
