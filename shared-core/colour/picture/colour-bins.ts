/** Steps a side of the grid that colours are gathered in. */
export const GRID = 32
/** Places a side of the moments' grid: one empty plane before the first step. */
export const SIDE = GRID + 1
const PLANE = SIDE * SIDE

/**
 * Colours gathered in a grid fitted to them.
 *
 * `weight`, `x`, `y`, `z` and `square` hold for each grid place ((x * SIDE + y) * SIDE + z) how many
 * colours fell there, the sums of their coordinates and of their squared lengths. `places` lists the
 * places that hold any, in order.
 */
export type ColourBins = Readonly<{
  weight: Float64Array
  x: Float64Array
  y: Float64Array
  z: Float64Array
  square: Float64Array
  places: Int32Array
}>

/**
 * Gathers points (three numbers each) in a grid that just holds them all.
 *
 * @param steps - Steps a side, up to GRID: fewer gather coarser groups.
 */
export function gatherBins(points: Float64Array, steps = GRID): ColourBins {
  const { low, scale } = gridOver(points, steps)
  const [lowX = 0, lowY = 0, lowZ = 0] = low
  const [scaleX = 0, scaleY = 0, scaleZ = 0] = scale
  const grid = () => new Float64Array(SIDE * PLANE)
  const bins = { weight: grid(), x: grid(), y: grid(), z: grid(), square: grid() }
  for (let i = 0; i < points.length; i += 3) {
    const x = points[i] as number
    const y = points[i + 1] as number
    const z = points[i + 2] as number
    // Plus one: the first plane of each axis stays empty for the moments.
    const place =
      (1 + Math.floor((x - lowX) * scaleX)) * PLANE +
      (1 + Math.floor((y - lowY) * scaleY)) * SIDE +
      (1 + Math.floor((z - lowZ) * scaleZ))
    bins.weight[place] = (bins.weight[place] as number) + 1
    bins.x[place] = (bins.x[place] as number) + x
    bins.y[place] = (bins.y[place] as number) + y
    bins.z[place] = (bins.z[place] as number) + z
    bins.square[place] = (bins.square[place] as number) + x * x + y * y + z * z
  }
  return { ...bins, places: filled(bins.weight) }
}

function gridOver(points: Float64Array, steps: number) {
  const low = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  const high = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let i = 0; i < points.length; i++) {
    const axis = i % 3
    const value = points[i] as number
    if (value < (low[axis] as number)) low[axis] = value
    if (value > (high[axis] as number)) high[axis] = value
  }
  const scale = low.map((from, axis) => {
    const range = (high[axis] as number) - from
    // A little under, so that the greatest value falls in the last step, not beyond it.
    return range > 1e-9 ? (steps - 1e-6) / range : 0
  })
  return { low, scale }
}

function filled(weight: Float64Array): Int32Array {
  const places: number[] = []
  for (let place = 0; place < weight.length; place++) {
    if ((weight[place] as number) > 0) places.push(place)
  }
  return Int32Array.from(places)
}

/** The mean point of each filled place (three numbers) and its weight, in the order of `places`. */
export function binMeans({ weight, x, y, z, places }: ColourBins) {
  const means = new Float64Array(3 * places.length)
  const weights = new Float64Array(places.length)
  for (const [i, place] of places.entries()) {
    const here = weight[place] as number
    weights[i] = here
    means[3 * i] = (x[place] as number) / here
    means[3 * i + 1] = (y[place] as number) / here
    means[3 * i + 2] = (z[place] as number) / here
  }
  return { means, weights }
}

/** Turns one quantity of the grid into running sums over all three axes, in place. */
export function accumulate(values: Float64Array): void {
  const area = new Float64Array(SIDE)
  for (let x = 1; x < SIDE; x++) {
    area.fill(0)
    for (let y = 1; y < SIDE; y++) {
      let line = 0
      const row = x * PLANE + y * SIDE
      for (let z = 1; z < SIDE; z++) {
        line += values[row + z] as number
        const sum = (area[z] as number) + line
        area[z] = sum
        values[row + z] = (values[row + z - PLANE] as number) + sum
      }
    }
  }
}
