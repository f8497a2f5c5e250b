import type { BeadExtent } from '../../../../shared-core/chart/bead-extent.ts'
import { beadBox, type StitchPitch } from '../../../../shared-core/chart/stitch-pitch.ts'

/** Part of a chart on a page: rows and positions (half beads), each from the first to before the second. */
export type ChartBlock = Readonly<{
  rows: readonly [from: number, to: number]
  at: readonly [from: number, to: number]
  /** Upper left corner on the page of its gutters and beads, mm. */
  xMm: number
  yMm: number
}>

/** A chart over pages: how many times life size, and each page's blocks. */
export type ChartPlan = Readonly<{
  scale: number
  blockWidthMm: number
  pages: readonly (readonly ChartBlock[])[]
}>

export type PlanTask = Readonly<{
  extent: BeadExtent
  pitch: StitchPitch
  room: Readonly<{ left: number; top: number; right: number; bottom: number }>
  /** At each side of a block, for row numbers and arrows. */
  gutterMm: number
}>

/** The shorter side of a printed bead in mm: as small as a symbol can be read, as large as is of use. */
export const BEAD_SIDE = { least: 3, most: 8 } as const
/** Above a block, for the numbers of columns. */
export const COLUMN_LABELS_MM = 4
const BETWEEN_BLOCKS_MM = 5
const SIZES = 24

/**
 * Lays a chart over as few pages as its smallest readable size needs, then as large as those pages allow.
 *
 * Pages break after every tenth row and column. A narrow chart goes on beside itself on the page.
 */
export function planChart(task: PlanTask): ChartPlan {
  const { diameterMm, lengthMm } = task.pitch.size
  const side = Math.min(diameterMm, lengthMm)
  const sizes = Array.from({ length: SIZES + 1 }, (_, i) => {
    const share = i / SIZES
    return (BEAD_SIDE.most + (BEAD_SIDE.least - BEAD_SIDE.most) * share) / side
  })
  const cuts = sizes.map((scale) => cutAt(task, scale))
  const fewest = cuts.reduce((least, { pages }) => Math.min(least, pages), Infinity)
  const best = cuts.find(({ pages }) => pages === fewest)
  if (best === undefined) throw new Error('expected a size to lay the chart out at')
  return { scale: best.scale, blockWidthMm: best.blockWidthMm, pages: placeBlocks(task, best) }
}

type Cut = Readonly<{
  scale: number
  bandAts: number
  bands: number
  groupRows: number
  groups: number
  across: number
  pages: number
  blockWidthMm: number
}>

function cutAt({ extent, pitch, room, gutterMm }: PlanTask, scale: number): Cut {
  const rows = extent.lastRow - extent.firstRow + 1
  const ats = extent.maxAt - extent.minAt + 1
  const { widthMm, heightMm } = largestBox(pitch)
  const half = pitch.halfMm * scale
  const down = pitch.downMm * scale
  const width = room.right - room.left
  const mostAts = Math.floor((width - 2 * gutterMm - widthMm * scale) / half) + 1
  const bandAts = ats <= mostAts ? ats : 2 * byTens(Math.floor(mostAts / 2))
  const bands = Math.ceil(ats / bandAts)
  const high = room.bottom - room.top - COLUMN_LABELS_MM - (heightMm + pitch.dropMm) * scale
  const mostRows = Math.max(1, Math.floor(high / down + 1e-6) + 1)
  const groups = rows <= mostRows ? 1 : Math.ceil(rows / byTens(mostRows))
  const groupRows = groups === 1 ? rows : Math.ceil(rows / groups / 10) * 10
  const blockWidthMm = 2 * gutterMm + (Math.min(ats, bandAts) - 1) * half + widthMm * scale
  const besides = Math.floor((width + BETWEEN_BLOCKS_MM) / (blockWidthMm + BETWEEN_BLOCKS_MM))
  const across = bands === 1 ? Math.max(1, Math.min(groups, besides)) : 1
  const pages = Math.ceil(Math.ceil(rows / groupRows) / across) * bands
  return { scale, bandAts, bands, groupRows, groups, across, pages, blockWidthMm }
}

function placeBlocks(task: PlanTask, cut: Cut): ChartPlan['pages'] {
  const { extent, room } = task
  const groups = Math.ceil((extent.lastRow - extent.firstRow + 1) / cut.groupRows)
  const pages: ChartBlock[][] = []
  for (let group = 0; group < groups; group += cut.across) {
    for (let band = 0; band < cut.bands; band += 1) {
      const onPage = Math.min(cut.across, groups - group)
      const wide = onPage * cut.blockWidthMm + (onPage - 1) * BETWEEN_BLOCKS_MM
      const left = room.left + (room.right - room.left - wide) / 2
      pages.push(
        Array.from({ length: onPage }, (_, i) => ({
          ...partOf(extent, cut, group + i, band),
          xMm: left + i * (cut.blockWidthMm + BETWEEN_BLOCKS_MM),
          yMm: room.top,
        })),
      )
    }
  }
  return pages
}

function partOf(extent: BeadExtent, { groupRows, bandAts }: Cut, group: number, band: number) {
  const row = extent.firstRow + group * groupRows
  const at = extent.minAt + band * bandAts
  return {
    rows: [row, Math.min(extent.lastRow + 1, row + groupRows)] as const,
    at: [at, Math.min(extent.maxAt + 1, at + bandAts)] as const,
  }
}

/** The larger of the boxes of even and odd rows. */
export function largestBox(pitch: StitchPitch): Readonly<{ widthMm: number; heightMm: number }> {
  const [even, odd] = [beadBox(pitch, 0), beadBox(pitch, 1)]
  return {
    widthMm: Math.max(even.widthMm, odd.widthMm),
    heightMm: Math.max(even.heightMm, odd.heightMm),
  }
}

function byTens(count: number): number {
  return count >= 10 ? Math.floor(count / 10) * 10 : Math.max(1, count)
}
