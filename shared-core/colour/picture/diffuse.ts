import type { CellLines } from './cell-lines.ts'

/**
 * What error diffusion asks of a palette.
 *
 * `choose` looks at the `channels` numbers of `values` from `at` (the wanted amounts with the errors
 * received), may clip them in place, writes the chosen colour's amounts into `chosen`, and returns
 * its index.
 */
export type Diffusion = Readonly<{
  lines: CellLines
  x: ArrayLike<number>
  channels: number
  choose: (values: Float64Array, at: number, chosen: Float64Array) => number
  /** Every second line from the right, which keeps errors from running in one direction. */
  serpentine: boolean
}>

/**
 * Error diffusion over the cells of any chart: 7/16 of a cell's error to the next in its line, and
 * 3, 5 and 1 sixteenths to the next line, behind, below and ahead.
 *
 * Where the next line lies out of step the three weights are shared out in proportion to distance,
 * so that their sum stays 9/16. Error that meets no cell (an edge, a hole) is dropped.
 *
 * @param values - `channels` numbers a cell; receives the errors, so it is used up.
 * @param into - Receives each cell's index from `choose`.
 * @returns a generator that yields the share done, 0 to 1.
 * @source R. W. Floyd and L. Steinberg, Proceedings of the SID 17 (1976); the shares for lines out
 *   of step are ours.
 */
export function* diffuse(
  { lines, x, channels, choose, serpentine }: Diffusion,
  values: Float64Array,
  into: Uint16Array,
): Generator<number, void> {
  const chosen = new Float64Array(channels)
  const error = new Float64Array(channels)
  const { order, starts, step } = lines
  const lineCount = starts.length - 1
  const give = (cell: number, share: number) => {
    for (let channel = 0; channel < channels; channel++) {
      const at = cell * channels + channel
      values[at] = (values[at] as number) + share * (error[channel] as number)
    }
  }
  for (let line = 0; line < lineCount; line++) {
    if (line % 16 === 0) yield line / lineCount
    const from = starts[line] as number
    const to = starts[line + 1] as number
    const next = { from: to, to: starts[line + 2] ?? to }
    const ahead = serpentine && line % 2 === 1 ? -1 : 1
    for (let k = 0; k < to - from; k++) {
      const i = ahead > 0 ? from + k : to - 1 - k
      const cell = order[i] as number
      into[cell] = choose(values, cell * channels, chosen)
      for (let channel = 0; channel < channels; channel++) {
        const wanted = values[cell * channels + channel] as number
        error[channel] = (wanted - (chosen[channel] as number)) / 16
      }
      const follower = order[i + ahead]
      const inLine = i + ahead >= from && i + ahead < to
      const at = x[cell] as number
      if (inLine && follower !== undefined && Math.abs((x[follower] as number) - at) < 1.5 * step) {
        give(follower, 7)
      }
      for (let j = firstNear(order, x, next, at - 2 * step); j < next.to; j++) {
        const below = order[j] as number
        const off = ((x[below] as number) - at) / step
        if (off >= 2) break
        const share = sharedBelow(ahead * off)
        if (share > 0) give(below, share)
      }
    }
  }
}

/** First place in the next line that lies right of `left`, by halving. */
function firstNear(
  order: Int32Array,
  x: ArrayLike<number>,
  { from, to }: Readonly<{ from: number; to: number }>,
  left: number,
): number {
  let low = from
  let high = to
  while (low < high) {
    const middle = (low + high) >> 1
    if ((x[order[middle] as number] as number) > left) high = middle
    else low = middle + 1
  }
  return low
}

/** Sixteenths given to a cell of the next line `off` steps ahead: 3 at -1, 5 at 0, 1 at 1, straight between. */
function sharedBelow(off: number): number {
  // A rounding of the layout must not turn 0.0000001 of a step into a share of its own.
  const place = Math.round(off * 1e6) / 1e6
  if (place <= -2 || place >= 2) return 0
  if (place < -1) return 3 * (place + 2)
  if (place < 0) return 3 + 2 * (place + 1)
  if (place < 1) return 5 - 4 * place
  return 2 - place
}
