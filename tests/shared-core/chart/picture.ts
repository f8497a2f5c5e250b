import {
  type Chart,
  type StitchKind,
  slotIndex,
  slotLabel,
} from '../../../shared-core/chart/chart.ts'

/** A chart from a picture: a line a row, a character a half bead, the letter where the bead begins. */
export function drawn(stitch: StitchKind, lines: readonly string[]): Chart {
  return { stitch, rows: lines.map(drawnRow) }
}

function drawnRow(line: string): Chart['rows'][number] {
  const start = line.search(/\S/)
  if (start < 0) return { start: 0, cells: new Uint16Array(0) }
  const letters = [...line.slice(start)].filter((_, i) => i % 2 === 0)
  return {
    start,
    cells: Uint16Array.from(letters, (letter) => (slotIndex(letter) ?? -1) + 1),
  }
}

/** The picture of a chart, lines ended at their last bead. */
export function picture({ rows }: Chart): readonly string[] {
  return rows.map(({ start, cells }) => {
    const letters = [...cells].map((cell) => (cell === 0 ? ' ' : slotLabel(cell - 1)))
    return (' '.repeat(Math.max(0, start)) + letters.join(' ')).trimEnd()
  })
}
