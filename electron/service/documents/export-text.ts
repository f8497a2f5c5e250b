import { assertNever } from '../../../shared-core/assert.ts'
import { slotIndex } from '../../../shared-core/chart/chart.ts'
import { fromChartJson } from '../../../shared-core/chart/chart-json.ts'
import { writeGridFile } from '../../../shared-core/chart/write-grid-file.ts'
import type { Panel } from '../../../shared-core/design/design.ts'
import { formatNumber } from '../../../shared-core/units/format-number.ts'
import { writeWordChart } from '../../../shared-core/words/write-word-chart.ts'
import { chartSvg } from '../exchange/chart-svg.ts'
import { csvCell } from '../exchange/csv-cell.ts'
import type { ExportKind } from './document-task.ts'
import { chartToPrint } from './pattern-sheet/chart-to-print.ts'
import type { SheetData } from './pattern-sheet/sheet-data.ts'
import { printedMg } from './pattern-sheet/sheet-words.ts'
import { slotLooks } from './pattern-sheet/slot-look.ts'

/** A file of text, and the name of the part it is about where it is about one. */
export type ExportedText = Readonly<{ text: string; partName: string | null }>

/** Times life size that an exported chart is drawn, so that symbols are read. */
const SVG_SCALE = 3

/** Writes one of the files beside a sheet; nothing where the design has no such part, or no bead to draw. */
export function exportText(
  data: SheetData,
  as: ExportKind,
  partId: string | undefined,
): ExportedText | null {
  switch (as) {
    case 'counts':
      return { text: countsText(data), partName: null }
    case 'word-chart':
      return { text: wordsText(data), partName: null }
    case 'grid': {
      const panel = panelOf(data, partId)
      return panel && { text: writeGridFile(fromChartJson(panel.chart)), partName: panel.name }
    }
    case 'chart-svg': {
      const panel = panelOf(data, partId)
      const printed = panel && chartToPrint(panel, data, slotLooks(data))
      return printed ? { text: chartSvg(printed, SVG_SCALE), partName: printed.name } : null
    }
    default:
      return assertNever(as)
  }
}

/** The panel of an id, or the first. */
function panelOf({ body }: SheetData, partId: string | undefined): Panel | null {
  const panels = body.parts.filter((part) => part.kind === 'panel')
  return panels.find(({ id }) => partId === undefined || id === partId) ?? null
}

/** Slot, bead, code, size, finish, beads and grams to have; fields apart by what the decimal mark leaves free. */
function countsText(data: SheetData): string {
  const { reading, decimal } = data
  const lookOf = slotLooks(data)
  const line = (cells: readonly string[]) => cells.map(csvCell).join(decimal === ',' ? ';' : ',')
  const head = line(['Slot', 'Bead', 'Code', 'Size', 'Finish', 'Beads', 'Grams to have'])
  const rows = reading.counts
    .filter(({ count }) => count > 0)
    .map(({ label, count, needMg }) => {
      const { name, code, form, finish } = lookOf(slotIndex(label) ?? 0)
      const grams = formatNumber((printedMg(needMg.value) / 1000).toFixed(2), decimal)
      return line([label, name, code, form?.name ?? '', finish, String(count), grams])
    })
  // The mark tells spreadsheets that the letters are of any script.
  return `\uFEFF${[head, ...rows].join('\r\n')}\r\n`
}

function wordsText(data: SheetData): string {
  const { body, reading, name, colourway, version, maker } = data
  const lookOf = slotLooks(data)
  const slots = reading.counts
    .filter(({ count }) => count > 0)
    .map(({ label, count }) => `${label}: ${lookOf(slotIndex(label) ?? 0).name}, ${count}`)
  const parts = body.parts.flatMap((part) => {
    const lines = reading.parts.find(({ partId }) => partId === part.id)?.words ?? []
    const intro = part.kind === 'panel' ? writeWordChart(fromChartJson(part.chart)).intro : []
    return lines.length === 0 ? [] : [[part.name, ...intro, '', ...lines].join('\n')]
  })
  const title = `${name}, ${colourway}, version ${version}. Designed by ${maker}`
  return `${[title, `Slots\n${slots.join('\n')}`, ...parts].join('\n\n')}\n`
}
