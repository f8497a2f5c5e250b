import { rowExtent } from './bead-extent.ts'
import type { ChartRow } from './chart.ts'

/** A row of one chart and the row of another it stands for; -1 where there is none. */
export type RowPair = Readonly<{ before: number; after: number }>

/** Rows times rows up to which the best matching is sought; beyond it rows are paired in order. */
const MOST_PAIRS = 4_000_000

/**
 * Pairs the rows of two charts, from the top: rows with the same beads first (the longest run of them
 * that keeps its order), wherever they lie sideways; between them rows in order, and what is left over
 * alone.
 *
 * Same rows at both ends are set aside first, so an ordinary edit costs one pass over the rows.
 */
export function matchRows(
  before: readonly ChartRow[],
  after: readonly ChartRow[],
): readonly RowPair[] {
  const keys = new Keys()
  const [a, b] = [before.map((row) => keys.of(row)), after.map((row) => keys.of(row))]
  const most = Math.min(a.length, b.length)
  let head = 0
  while (head < most && a[head] === b[head]) head += 1
  let tail = 0
  while (tail < most - head && a.at(-1 - tail) === b.at(-1 - tail)) tail += 1
  const middle = { a: a.slice(head, a.length - tail), b: b.slice(head, b.length - tail) }
  const anchors = longestCommon(middle).map((pair) => shifted(pair, head))
  const ends = Array.from({ length: tail }, (_, i) => ({
    before: a.length - tail + i,
    after: b.length - tail + i,
  }))
  const starts = Array.from({ length: head }, (_, row) => ({ before: row, after: row }))
  return filled([...starts, ...anchors, ...ends], { before: a.length, after: b.length })
}

function shifted({ before, after }: RowPair, by: number): RowPair {
  return { before: before + by, after: after + by }
}

/** Puts the rows between matched ones in: in order while both charts have some, then alone. */
function filled(matched: readonly RowPair[], ends: RowPair): readonly RowPair[] {
  const pairs: RowPair[] = []
  let [before, after] = [0, 0]
  for (const match of [...matched, ends]) {
    while (before < match.before || after < match.after) {
      const hasBefore = before < match.before
      const hasAfter = after < match.after
      pairs.push({ before: hasBefore ? before : -1, after: hasAfter ? after : -1 })
      if (hasBefore) before += 1
      if (hasAfter) after += 1
    }
    if (match !== ends) pairs.push(match)
    before += 1
    after += 1
  }
  return pairs
}

/** The longest common subsequence by the usual table, kept in whole. */
function longestCommon({
  a,
  b,
}: Readonly<{ a: readonly number[]; b: readonly number[] }>): readonly RowPair[] {
  const width = b.length + 1
  if ((a.length + 1) * width > MOST_PAIRS) return []
  const lengths = new Uint32Array((a.length + 1) * width)
  for (let i = a.length - 1; i >= 0; i -= 1) {
    for (let j = b.length - 1; j >= 0; j -= 1) {
      lengths[i * width + j] =
        a[i] === b[j]
          ? (lengths[(i + 1) * width + j + 1] ?? 0) + 1
          : Math.max(lengths[(i + 1) * width + j] ?? 0, lengths[i * width + j + 1] ?? 0)
    }
  }
  const pairs: RowPair[] = []
  let [i, j] = [0, 0]
  while (i < a.length && j < b.length) {
    if (a[i] === b[j]) {
      pairs.push({ before: i, after: j })
      i += 1
      j += 1
    } else if ((lengths[(i + 1) * width + j] ?? 0) >= (lengths[i * width + j + 1] ?? 0)) i += 1
    else j += 1
  }
  return pairs
}

/** Numbers rows so that rows with the same beads, cut to them, share a number. */
class Keys {
  readonly #numbers = new Map<string, number>()

  of(row: ChartRow): number {
    const { first, last } = rowExtent(row)
    const beads = row.cells.subarray(first, last + 1)
    let key = ''
    for (let from = 0; from < beads.length; from += 8192) {
      key += String.fromCharCode(...beads.subarray(from, from + 8192))
    }
    const number = this.#numbers.get(key) ?? this.#numbers.size
    this.#numbers.set(key, number)
    return number
  }
}
