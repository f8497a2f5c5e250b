import { findForm } from '../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../shared-core/beads/user-forms.ts'
import { fromChartJson } from '../../shared-core/chart/chart-json.ts'
import { layoutChart } from '../../shared-core/chart/layout.ts'
import { beadBox } from '../../shared-core/chart/stitch-pitch.ts'
import { slotKey } from '../../shared-core/design/bill.ts'
import type { DesignBody, Panel } from '../../shared-core/design/design.ts'
import type { TagPicture } from './documents/tag-sheet.ts'

// A tag is a few centimetres wide: more beads than this would print as dust.
const MOST_BEADS = 1_500

/**
 * The first panel of a design drawn small, in the colours of the beads chosen for its slots.
 *
 * @param colours by key of the bill; a slot without one keeps the palette's own colour
 */
export function tagPicture(
  body: DesignBody,
  colours: Readonly<Record<string, string | undefined>>,
  tables: BeadTables,
): TagPicture | null {
  const panel = body.parts.find((part) => part.kind === 'panel')
  const form = panel && findForm(tables, panel.formId)
  if (panel === undefined || form === undefined) return null
  const chart = fromChartJson(panel.chart)
  const layout = layoutChart(chart, form)
  const slots = slotsInOrder(panel)
  if (slots.length === 0 || slots.length > MOST_BEADS) return null
  const box = beadBox(layout.pitch, 0)
  return {
    widthMm: layout.widthMm,
    heightMm: layout.heightMm,
    beadWidthMm: box.widthMm,
    beadHeightMm: box.heightMm,
    beads: slots.map((slot, bead) => {
      const entry = body.palette[slot]
      return {
        xMm: (layout.xMm[bead] ?? 0) - layout.bounds.left,
        yMm: (layout.yMm[bead] ?? 0) - layout.bounds.top,
        colour: (entry && colours[slotKey(entry.label)]) ?? entry?.colourHex ?? '#888888',
      }
    }),
  }
}

/** Slots bead by bead: rows from the top, each from the left, as beads are numbered. */
function slotsInOrder(panel: Panel): readonly number[] {
  return fromChartJson(panel.chart).rows.flatMap((row) =>
    [...row.cells].filter((cell) => cell !== 0).map((cell) => cell - 1),
  )
}
