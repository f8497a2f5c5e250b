import type { StitchKind } from '../chart.ts'
import type { BeadSize } from '../stitch-pitch.ts'
import { type OutlineSize, outlineSizeFor } from './chart-from-outline.ts'
import type { Extent } from './parse-extent.ts'

/** A size asked for, each way in beads or in mm. */
export type WantedSize = Readonly<{ across: Extent; down: Extent }>

/**
 * The beads that come nearest to a size: columns and rows, in right-angle weave units each way.
 *
 * Millimetres follow the stitch's pitch as `outlineSizeFor` does; a right-angle weave of n units is
 * n x (l + d) + d. Herringbone takes whole pairs of columns. At least one bead each way.
 */
export function sizeInBeads(
  stitch: StitchKind,
  { across, down }: WantedSize,
  size: BeadSize,
): OutlineSize {
  const widthMm = across.kind === 'mm' ? across.mm : 0
  const heightMm = down.kind === 'mm' ? down.mm : 0
  const near =
    stitch === 'right-angle-weave'
      ? { columns: units(widthMm, size), rows: units(heightMm, size) }
      : outlineSizeFor(stitch, { widthMm, heightMm }, size)
  const columns = across.kind === 'beads' ? across.count : near.columns
  const rows = down.kind === 'beads' ? down.count : near.rows
  return { columns: stitch === 'herringbone' ? Math.max(2, pairs(columns)) : columns, rows }
}

function units(mm: number, { diameterMm, lengthMm }: BeadSize): number {
  return Math.max(1, Math.round((mm - diameterMm) / (diameterMm + lengthMm)))
}

/** An odd column has no partner: the pair is made whole. */
function pairs(columns: number): number {
  return columns + (columns % 2)
}
