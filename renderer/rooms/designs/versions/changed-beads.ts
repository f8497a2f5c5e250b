import { findBead } from '../../../../shared-core/chart/bead-index.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { compareCharts } from '../../../../shared-core/chart/compare-charts.ts'
import type { DesignBody, Part } from '../../../../shared-core/design/design.ts'
import { readStrandBeads } from '../../../../shared-core/stitches/strand/strand-beads.ts'
import type { Assembly, PlacedPart } from '../assembly/assemble.ts'

/** Beads of a drawn version that the other version has not, or has otherwise: their numbers in the picture. */
export function changedBeads(
  assembly: Assembly,
  body: DesignBody,
  other: DesignBody,
): readonly number[] {
  return assembly.parts.flatMap((placed) => {
    const own = body.parts.find(({ id }) => id === placed.partId)
    const theirs = other.parts.find(({ id, kind }) => id === placed.partId && kind === own?.kind)
    if (own === undefined) return []
    return changedOf(placed, own, theirs).map((bead) => placed.firstBead + bead)
  })
}

function changedOf(placed: PlacedPart, own: Part, other: Part | undefined): readonly number[] {
  if (other === undefined) return all(placed.beads)
  if (own.kind === 'strand' && other.kind === 'strand') return changedStrand(own.beads, other.beads)
  if (own.kind === 'panel' && other.kind === 'panel') return changedPanel(placed, own, other)
  return []
}

function changedStrand(own: string, other: string): readonly number[] {
  const [now, before] = [readStrandBeads(own) ?? [], readStrandBeads(other) ?? []]
  return Array.from(now).flatMap((slot, bead) => (slot === before[bead] ? [] : [bead]))
}

type PanelPart = Extract<Part, { kind: 'panel' }>

function changedPanel({ index }: PlacedPart, own: PanelPart, other: PanelPart): readonly number[] {
  if (index === undefined) return []
  const { rowsAdded, rowsMoved, cells } = compareCharts(
    fromChartJson(other.chart),
    fromChartJson(own.chart),
  )
  const wholeRows = [...rowsAdded, ...rowsMoved].flatMap((row) => {
    const first = index.rowStart[row] ?? 0
    return all((index.rowStart[row + 1] ?? first) - first).map((bead) => first + bead)
  })
  const single = Array.from(cells.row, (row, at) => findBead(index, row, cells.at[at] ?? 0))
  return [...wholeRows, ...single.filter((bead) => bead >= 0)]
}

function all(count: number): readonly number[] {
  return Array.from({ length: count }, (_, bead) => bead)
}
