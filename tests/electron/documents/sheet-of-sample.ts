import type { SheetOrder } from '../../../electron/service/documents/document-task.ts'
import type {
  Filling,
  SheetData,
} from '../../../electron/service/documents/pattern-sheet/sheet-data.ts'
import { sampleDesigns } from '../../../electron/service/sample/designs.ts'
import { sampleMaterials } from '../../../electron/service/sample/materials.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { nothingLearned } from '../../../shared-core/design/learned.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'

/** What the sheet of one of the sample's designs is made from. */
export function sheetOfSample(
  name: string,
  changes: Partial<SheetData> = {},
): SheetData & SheetOrder {
  const design = sampleDesigns.find((one) => one.name === name)
  const colourway = design?.colourways[0]
  if (design === undefined || colourway === undefined) throw new Error(`no sample named ${name}`)
  const read = readDesign(design.body, referenceTables)
  if (!read.ok) throw new Error(read.error.message)
  return {
    audience: 'self',
    paper: 'a4',
    name,
    colourway: colourway.name,
    version: 1,
    maker: 'Saltmarsh Beadworks, at the tide mill',
    day: 'Fri 4 Dec 2026',
    decimal: '.',
    tables: referenceTables,
    body: design.body,
    reading: read.value,
    fillings: Object.fromEntries(
      Object.entries(colourway.materials).map(([key, code]) => [key, fillingOf(code)]),
    ),
    known: { ...nothingLearned, calibrations: {} },
    caution: 'Small parts: not for children under 3.',
    terms: '',
    ...changes,
  }
}

function fillingOf(code: string): Filling {
  const material = sampleMaterials.find((one) => one.code === code)
  if (material === undefined) throw new Error(`no material coded ${code}`)
  const { name, colourHex, finish, drawer, declaration = '' } = material
  return { code, name, colourHex, finish, drawer, declaration }
}
