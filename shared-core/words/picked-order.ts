import type { BeadIndex } from '../chart/bead-index.ts'
import type { StitchKind } from '../chart/chart.ts'
import { isOddColumn } from '../chart/stitch-pitch.ts'
import { lineOfCells, type PlacedCell, type WorkLine } from './work-line.ts'

/**
 * The lines a chart is worked in by a route: one for each stretch of a row that is picked up in one go.
 *
 * A row worked in parts (lobes, the sides of a hole) has a line for each. In right-angle weave, whose
 * rings take beads of three rows at once, each row has one line. Peyote's first two half rows are one
 * line when they are strung together. Beads that are never picked up come last.
 *
 * @param picks - Bead numbers in the order they are picked up.
 */
export function pickedOrder(
  stitch: StitchKind,
  index: BeadIndex,
  picks: Iterable<number>,
): readonly WorkLine[] {
  const lines = new PickedLines(stitch)
  const isPicked = new Uint8Array(index.count)
  for (const bead of picks) {
    if (isPicked[bead] !== 0) continue
    isPicked[bead] = 1
    lines.pick(index, bead)
  }
  lines.breakOff()
  for (let bead = 0; bead < index.count; bead += 1) {
    if (isPicked[bead] === 0) lines.pick(index, bead)
  }
  return lines.finished()
}

type Part = { readonly rows: Set<number>; readonly beads: PlacedCell[] }

class PickedLines {
  readonly #stitch: StitchKind
  readonly #parts: Part[] = []
  readonly #partOfRow = new Map<number, Part>()
  #current: Part | undefined

  constructor(stitch: StitchKind) {
    this.#stitch = stitch
  }

  pick({ rowOf, atOf, slotOf }: BeadIndex, bead: number): void {
    const at = atOf[bead] ?? 0
    const row = this.#stitch === 'peyote' ? halfRow(rowOf[bead] ?? 0, at) : (rowOf[bead] ?? 0)
    const part = this.#partFor(row, at)
    part.rows.add(row)
    part.beads.push({ at, cell: (slotOf[bead] ?? 0) + 1 })
    this.#current = part
  }

  /** What follows begins a line of its own. */
  breakOff(): void {
    this.#current = undefined
  }

  finished(): readonly WorkLine[] {
    return this.#parts.map(({ rows, beads }) =>
      lineOfCells(this.#stitch, {
        rows: [...rows].sort((a, b) => a - b),
        side: (beads[0]?.at ?? 0) <= (beads.at(-1)?.at ?? 0) ? 'left' : 'right',
        beads,
      }),
    )
  }

  #partFor(row: number, at: number): Part {
    const known = this.#stitch === 'right-angle-weave' ? this.#partOfRow.get(row) : this.#current
    if (known?.rows.has(row) === true) return known
    if (known !== undefined && this.#isStrung(known, row, at)) return known
    const part: Part = { rows: new Set(), beads: [] }
    this.#parts.push(part)
    this.#partOfRow.set(row, part)
    return part
  }

  /** Whether a bead goes on with peyote's first string: the next column, of the other half row. */
  #isStrung({ rows, beads }: Part, row: number, at: number): boolean {
    if (this.#stitch !== 'peyote' || this.#parts.length > 1 || rows.size > 1) return false
    const [first = row] = rows
    return Math.abs(row - first) === 1 && Math.abs(at - (beads.at(-1)?.at ?? 0)) === 2
  }
}

function halfRow(row: number, at: number): number {
  return 2 * row + (isOddColumn(at) ? 1 : 0)
}
