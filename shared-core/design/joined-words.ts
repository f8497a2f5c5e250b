import type { JoinedWords } from '../route/bench-steps.ts'
import type { MirrorBead } from '../route/mirror-route.ts'
import { rowPlace } from '../words/row-place.ts'
import type { DesignBody, Strand } from './design.ts'
import type { StitchedPanel } from './stitch-panel.ts'

type JoinedPanel = Pick<StitchedPanel, 'panel' | 'chart' | 'index'>

/**
 * What the beads of a panel are called where a strand goes through them: their row and bead from the
 * left, as the word chart counts, and the panel by its name where the design has several.
 *
 * @param image - Where a bead of the copy in hand lies in the chart, for a mirrored copy.
 */
export function joinedWords(
  { panel, chart, index }: JoinedPanel,
  { parts }: DesignBody,
  image?: MirrorBead,
): JoinedWords {
  const isOnly = parts.filter(({ kind }) => kind === 'panel').length === 1
  return {
    panel: isOnly ? 'the panel' : panel.name,
    placeOf: (seen) => {
      const { row, bead, of } = rowPlace(chart.stitch, index, image?.(seen) ?? seen)
      return `row ${row}, bead ${image === undefined ? bead : of - bead + 1}`
    },
  }
}

/** Where a strand hangs: `row 5, bead 1 of the panel`; fringe side by side from its first bead to its last. */
export function hangingPlace(strand: Strand, { index }: JoinedPanel, words: JoinedWords): string {
  const { anchor, shape, copies } = strand
  if (anchor === undefined) return ''
  const first = (index.rowStart[anchor.row] ?? 0) + anchor.bead
  const rowEnd = (index.rowStart[anchor.row + 1] ?? 0) - 1
  const last = shape === 'fringe' ? Math.min(rowEnd, first + copies - 1) : first
  const to = last > first ? ` to ${words.placeOf(last)}` : ''
  return `${words.placeOf(first)}${to} of ${words.panel}`
}
