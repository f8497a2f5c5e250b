import { measureText } from '../../electron/service/documents/fonts.ts'
import { paintPdf } from '../../electron/service/documents/paint-pdf.ts'
import { patternSheet } from '../../electron/service/documents/pattern-sheet/pattern-sheet.ts'
import { referenceTables } from '../../shared-core/beads/bead-tables.ts'
import { slotLabel } from '../../shared-core/chart/chart.ts'
import type { DesignBody } from '../../shared-core/design/design.ts'
import { readDesign } from '../../shared-core/design/read-design.ts'
import { medianOf, type Row } from './row.ts'

export const name = 'Pattern sheet of a panel of 100 by 200 beads'

const [COLUMNS, ROWS, SLOTS] = [100, 200, 12]
const ROUNDS = 5

/** Laying out and painting the sheet of a large panel, and how large the file is. */
export async function run(): Promise<Row[]> {
  const body = largePanel()
  const times = {
    read: [] as number[],
    lay: [] as number[],
    paint: [] as number[],
    all: [] as number[],
  }
  let bytes = 0
  for (let round = -1; round < ROUNDS; round += 1) {
    const start = performance.now()
    const reading = readDesign(body, referenceTables)
    if (!reading.ok) throw new Error(reading.error.message)
    const read = performance.now()
    const pages = patternSheet(
      {
        audience: 'sale',
        paper: 'a4',
        name: 'Saltmarsh at low water',
        colourway: 'Ebb',
        version: 1,
        maker: 'Saltmarsh Beadworks',
        day: 'Fri 4 Dec 2026',
        decimal: '.',
        tables: referenceTables,
        body,
        reading: reading.value,
        fillings: {},
        caution: '',
        terms: '',
      },
      measureText,
    )
    const laid = performance.now()
    const pdf = await paintPdf(pages, {
      title: 'Panel',
      author: 'Saltmarsh Beadworks',
      madeAtMs: 0,
    })
    const done = performance.now()
    bytes = pdf.byteLength
    // The first round opens the fonts.
    if (round < 0) continue
    times.read.push(read - start)
    times.lay.push(laid - read)
    times.paint.push(done - laid)
    times.all.push(done - start)
  }
  const row = (measure: string, values: readonly number[]): Row => ({
    measure,
    n: values.length,
    ...medianOf(values),
  })
  return [
    row('reading the design', times.read),
    row('laying out the pages', times.lay),
    row('painting the PDF', times.paint),
    row('the whole sheet', times.all),
    { measure: 'size of the file', n: 1, ...medianOf([bytes / 1024 / 1024], 'MiB') },
  ]
}

/** Motifs a few beads wide in a dozen slots, as woven pictures are. */
function largePanel(): DesignBody {
  const rows = Array.from({ length: ROWS }, (_, row) => ({
    start: row % 2,
    cells: Array.from(
      { length: COLUMNS / 4 },
      (_, i) => `4${slotLabel(((row >> 3) * 5 + i * 7) % SLOTS)}`,
    ).join(' '),
  }))
  return {
    unitName: 'panel',
    palette: Array.from({ length: SLOTS }, (_, slot) => ({
      label: slotLabel(slot),
      name: `Tide ${slot + 1}`,
      formId: 'cylinder-11/0',
      colourHex: `#${(0x203040 + slot * 0x101214).toString(16).padStart(6, '0')}`,
      finish: 'opaque' as const,
    })),
    parts: [
      {
        kind: 'panel',
        id: 'panel',
        name: 'Low water',
        chart: { stitch: 'brick', rows },
        formId: 'cylinder-11/0',
        copies: 1,
        mirrored: false,
        route: {},
      },
    ],
    extras: [],
    threadId: 'braided-6lb',
    needleSize: '12',
  }
}
