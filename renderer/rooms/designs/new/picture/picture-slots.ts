import { type ChartJson, toChartJson } from '../../../../../shared-core/chart/chart-json.ts'
import { normaliseChart } from '../../../../../shared-core/chart/normalise-chart.ts'
import { colourNames } from '../../../../../shared-core/colour/colour-name.ts'
import type { PictureChart } from '../../../../../shared-core/colour/picture/picture-to-chart.ts'
import type { PaletteSlot } from '../../../../../shared-core/design/design.ts'
import { paletteOf } from './palette-of.ts'
import type { PictureJob } from './picture-job.ts'
import type { StockBead } from './stock-beads.ts'

/** A picture as a chart on its way to a design: its slots, what fills them, and those beads by slot letter. */
export type PictureSlots = Readonly<{
  chart: ChartJson
  palette: readonly PaletteSlot[]
  materials: Readonly<Record<string, string>>
  inStock: ReadonlyMap<string, StockBead>
}>

/** Puts what was made of a picture into the chart it was asked for. */
export function pictureSlots(job: PictureJob, made: PictureChart): PictureSlots {
  let from = 0
  const rows = job.chart.rows.map(({ start, cells }) => {
    const row = { start, cells: made.slots.slice(from, from + cells.length) }
    from += cells.length
    return row
  })
  const beads = new Map(job.beads.map((bead) => [bead.id, bead]))
  const names = colourNames(made.palette.map(({ hex }) => hex))
  const colours = made.palette.map(({ hex, beadId }, at) => {
    const bead = beads.get(beadId ?? '')
    return { hex, name: names[at] ?? hex, ...(bead === undefined ? {} : { bead }) }
  })
  const { palette, materials } = paletteOf(colours, job.formId)
  const inStock = new Map(
    palette.flatMap(({ label }, at) => {
      const bead = colours[at]?.bead
      return bead === undefined ? [] : [[label, bead] as const]
    }),
  )
  const { chart } = normaliseChart({ stitch: job.chart.stitch, rows })
  return { chart: toChartJson(chart), palette, materials, inStock }
}
