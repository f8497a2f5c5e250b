import { rgbOfLab } from '../lab.ts'
import { hexOfRgb } from '../srgb.ts'
import { binMeans, gatherBins } from './colour-bins.ts'
import { labOfEven } from './even-space.ts'
import { refineMeans } from './refine-means.ts'
import { splitByVariance } from './variance-split.ts'

/**
 * At most `count` colours that stand for many, as `#rrggbb`.
 *
 * Colours are gathered in a grid, split by variance, and the means refined by k-means over the
 * grid's places, all in the even space. Nothing is random: the same colours give the same palette.
 *
 * @param even - Three numbers a colour, from `writeEven`; at least one colour.
 * @param count - Colours wanted, 1 or more.
 */
export function freePalette(even: Float64Array, count: number): readonly string[] {
  const bins = gatherBins(even)
  const { means: points, weights } = binMeans(bins)
  const means = splitByVariance(bins, count)
  refineMeans(points, weights, means)
  const hexes = Array.from({ length: means.length / 3 }, (_, i) =>
    hexOfRgb(
      rgbOfLab(
        labOfEven(means[3 * i] as number, means[3 * i + 1] as number, means[3 * i + 2] as number),
      ),
    ),
  )
  return [...new Set(hexes)]
}
