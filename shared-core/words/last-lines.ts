import type { StitchKind } from '../chart/chart.ts'
import { parity, stitchPhase } from '../chart/row-phase.ts'
import { cellStep } from './lattice-rows.ts'

/** First and last bead of a line, as left edges in half beads. */
export type LineEnds = Readonly<{ from: number; to: number }>

/** The side a line begins at, seen from the front. */
export type Side = 'left' | 'right'

/** A line about to be written or read: the rows it fills, where it begins, its places with gaps counted. */
export type LineShape = Readonly<{ rows: readonly number[]; side: Side; places: number }>

/**
 * The lines of a word chart so far, row by row: what the next line's ends are told by.
 *
 * Writer and reader keep the same record, so that what one leaves out the other can tell.
 */
export class LastLines {
  readonly #stitch: StitchKind
  readonly #ends = new Map<number, LineEnds & Readonly<{ order: number }>>()
  readonly #hangsOn = new Map<number, number>()
  #kept = 0

  constructor(stitch: StitchKind) {
    this.#stitch = stitch
  }

  /** Keeps a row's latest line. */
  keep(row: number, ends: LineEnds): void {
    const other = this.#referenceRow(row)
    if (other !== undefined) this.#hangsOn.set(row, other)
    this.#ends.set(row, { ...ends, order: this.#kept })
    this.#kept += 1
  }

  /**
   * The line a row's ends are measured by: of the rows beside it the one told last, for a further part of
   * a row the row its first part hangs on. Peyote's half rows and the rows of right-angle weave are
   * measured by the next of their own kind where there is one.
   */
  reference(row: number): LineEnds | undefined {
    const other = this.#referenceRow(row)
    return other === undefined ? undefined : this.#ends.get(other)
  }

  /**
   * Where a line begins at the left when it does not say: as wide as its reference, or as much wider or
   * narrower as goes evenly to both ends, or for brick as wide half a bead out of step, out where it
   * begins; the first line at the left edge.
   *
   * @returns The first place's left edge in half beads, or `undefined` when it cannot be told.
   */
  impliedFrom(line: LineShape): number | undefined {
    const [row = 0] = line.rows
    if (this.#ends.size === 0) return this.#firstFrom(line)
    const reference = this.reference(row)
    if (reference === undefined || line.rows.length > 1) return undefined
    const step = cellStep(this.#stitch)
    const more = line.places - ((reference.to - reference.from) / step + 1)
    const isOutOfStep = this.#isOutOfStep(row)
    if (more === 0 && !isOutOfStep) return reference.from
    if (more === 0 && this.#stitch === 'brick') {
      return reference.from + (line.side === 'left' ? -1 : 1)
    }
    return isOutOfStep && parity(more) === 1 ? reference.from - (more * step) / 2 : undefined
  }

  #referenceRow(row: number): number | undefined {
    const known = this.#hangsOn.get(row)
    if (known !== undefined) return known
    return (this.#isByTurns() ? this.#latest(row, 2) : undefined) ?? this.#latest(row, 1)
  }

  /** The row of the two at a distance that was told last. */
  #latest(row: number, distance: number): number | undefined {
    const [above, below] = [this.#ends.get(row - distance), this.#ends.get(row + distance)]
    if (above === undefined) return below === undefined ? undefined : row + distance
    return below === undefined || above.order > below.order ? row - distance : row + distance
  }

  /** Whether rows of two kinds lie by turns. */
  #isByTurns(): boolean {
    return this.#stitch === 'peyote' || this.#stitch === 'right-angle-weave'
  }

  /** Whether a row lies half a place out of step with its reference. */
  #isOutOfStep(row: number): boolean {
    const other = this.#referenceRow(row) ?? row
    return this.#stitch === 'brick' || (this.#isByTurns() && parity(other - row) === 1)
  }

  #firstFrom({ rows, side, places }: LineShape): number {
    const [row = 0] = rows
    if (this.#stitch !== 'peyote') return stitchPhase(this.#stitch, row, parity(row))
    if (rows.length === 1) return 2 * parity(row)
    // Two half rows strung together: the last bead strung is one of the first half row, so that the
    // third half row begins beside it.
    return 2 * parity(side === 'right' ? row : row + places - 1)
  }
}
