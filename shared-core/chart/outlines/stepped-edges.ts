/** Where a line of work begins and ends, in half beads: `to` is the right or lower edge of its last bead. */
export type LineSpan = Readonly<{ from: number; to: number }>

/** A line as wanted: its two edges in half beads, not whole. */
export type WantedSpan = Readonly<{ from: number; to: number }>

/** Half beads: far above rounding noise, far below any real difference. */
const TIE = 1e-6

/**
 * Edges that follow an outline by legal half-bead steps: from each line to the next outwards both ends
 * move half a bead, in or out, whichever comes nearer to what is wanted.
 *
 * Work begins at line `first`, which is taken as wanted. A line keeps at least two beads, because one
 * bead has no bridge to hang the next line on; the outermost may be a single bead.
 *
 * @source Bead arithmetic of brick stitch: each end of a row lies half a bead out or in from the row it
 *   hangs on. Peyote's half rows lie on each other in the same way, a column taking the place of half a bead.
 */
export function steppedEdges(wanted: readonly WantedSpan[], first: number): readonly LineSpan[] {
  const start = wanted[first]
  if (start === undefined) return []
  const spans: LineSpan[] = []
  const widest = wholeBeads(start)
  const most = widest.to - widest.from
  spans[first] = widest
  for (let line = first - 1; line >= 0; line -= 1) {
    spans[line] = step(spans[line + 1], wanted[line], { most, isTip: line === 0 })
  }
  for (let line = first + 1; line < wanted.length; line += 1) {
    spans[line] = step(spans[line - 1], wanted[line], { most, isTip: line === wanted.length - 1 })
  }
  return spans
}

function wholeBeads({ from, to }: WantedSpan): LineSpan {
  // Halves go down: an even count of peyote columns is half a place short of a whole bead.
  const beads = Math.max(1, Math.ceil((to - from) / 2 - 0.5))
  const begin = Math.round((from + to) / 2 - beads)
  return { from: begin, to: begin + 2 * beads }
}

function step(
  inner: LineSpan | undefined,
  want: WantedSpan | undefined,
  { most, isTip }: Readonly<{ most: number; isTip: boolean }>,
): LineSpan {
  if (inner === undefined || want === undefined) return { from: 0, to: 2 }
  // A tie goes inwards: outlines shrink towards their ends. What the two sides differ by in floating
  // point must not break a tie, or they would come out unlike.
  const from = want.from < inner.from - TIE ? inner.from - 1 : inner.from + 1
  const to = want.to > inner.to + TIE ? inner.to + 1 : inner.to - 1
  const least = isTip ? 2 : 4
  if (to - from >= least) return { from, to }
  // Too narrow to go on: both ends go out again, so that the outline stays alike on both sides.
  const wider = { from: inner.from - 1, to: inner.to + 1 }
  return wider.to - wider.from <= most ? wider : leaning({ from, to }, { inner, want })
}

/** As wide as the line within, out at the end where that is nearer to what is wanted. */
function leaning(
  { from, to }: LineSpan,
  { inner, want }: Readonly<{ inner: LineSpan; want: WantedSpan }>,
): LineSpan {
  const isLeftNearer = Math.abs(want.from - inner.from + 1) < Math.abs(want.to - inner.to - 1)
  return isLeftNearer ? { from: inner.from - 1, to } : { from, to: inner.to + 1 }
}
