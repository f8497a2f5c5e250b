import { accumulate, type ColourBins, GRID, SIDE } from './colour-bins.ts'

/** A box of the grid: after `x0` up to and with `x1`, and so on, as [x0, x1, y0, y1, z0, z1]. */
type Box = readonly [number, number, number, number, number, number]

const AXES = [0, 2, 4] as const

type Sums = Readonly<{ weight: number; x: number; y: number; z: number }>

const EVERYTHING: Box = [0, GRID, 0, GRID, 0, GRID]

/**
 * Splits gathered colours into at most `count` boxes of like colour and gives their mean points.
 *
 * The box with the greatest squared error is cut where the two parts' errors come out least, until
 * there are enough boxes or nothing is left to split. Uses up `bins` (its sums become running sums).
 *
 * @returns three numbers a mean; fewer means than `count` when there are fewer colours.
 * @source Xiaolin Wu, Color Quantization by Dynamic Programming and Principal Analysis, ACM
 *   Transactions on Graphics 11(4), 1992; Graphics Gems II, 1991.
 */
export function splitByVariance(bins: ColourBins, count: number): Float64Array {
  const { weight, x, y, z, square } = bins
  for (const values of [weight, x, y, z, square]) accumulate(values)
  const boxes: { box: Box; error: number }[] = [
    { box: EVERYTHING, error: errorOf(bins, EVERYTHING) },
  ]
  while (boxes.length < count) {
    const worst = boxes.reduce((most, entry) => (entry.error > most.error ? entry : most))
    if (worst.error <= 1e-9) break
    const halves = bestCut(bins, worst.box)
    if (halves === undefined) {
      // All its colours share one place of the grid: what is left of its error cannot be split.
      worst.error = 0
      continue
    }
    const [first, second] = halves
    worst.box = first
    worst.error = errorOf(bins, first)
    boxes.push({ box: second, error: errorOf(bins, second) })
  }
  return Float64Array.from(
    boxes.flatMap(({ box }) => {
      const sums = sumsIn(bins, box)
      return [sums.x / sums.weight, sums.y / sums.weight, sums.z / sums.weight]
    }),
  )
}

/** Sum of a running quantity over a box, by the eight corners. */
function sumIn(values: Float64Array, [x0, x1, y0, y1, z0, z1]: Box): number {
  const at = (x: number, y: number, z: number) => values[(x * SIDE + y) * SIDE + z] as number
  return (
    at(x1, y1, z1) -
    at(x1, y1, z0) -
    at(x1, y0, z1) +
    at(x1, y0, z0) -
    at(x0, y1, z1) +
    at(x0, y1, z0) +
    at(x0, y0, z1) -
    at(x0, y0, z0)
  )
}

function sumsIn({ weight, x, y, z }: ColourBins, box: Box): Sums {
  return {
    weight: sumIn(weight, box),
    x: sumIn(x, box),
    y: sumIn(y, box),
    z: sumIn(z, box),
  }
}

const lengthOver = ({ weight, x, y, z }: Sums) => (x * x + y * y + z * z) / weight

function errorOf(bins: ColourBins, box: Box): number {
  return sumIn(bins.square, box) - lengthOver(sumsIn(bins, box))
}

/** The two parts of a box with the least error between them, or nothing when it has one place only. */
function bestCut(bins: ColourBins, box: Box): readonly [Box, Box] | undefined {
  const whole = sumsIn(bins, box)
  let best: readonly [Box, Box] | undefined
  let most = Number.NEGATIVE_INFINITY
  for (const axis of AXES) {
    for (let cut = box[axis] + 1; cut < (box[axis + 1] as number); cut++) {
      const lower = box.with(axis + 1, cut) as unknown as Box
      const part = sumsIn(bins, lower)
      if (part.weight <= 0 || part.weight >= whole.weight) continue
      const rest = {
        weight: whole.weight - part.weight,
        x: whole.x - part.x,
        y: whole.y - part.y,
        z: whole.z - part.z,
      }
      const kept = lengthOver(part) + lengthOver(rest)
      if (kept > most) {
        most = kept
        best = [lower, box.with(axis, cut) as unknown as Box]
      }
    }
  }
  return best
}
