import type { BeadFinish } from '../../../../shared-core/beads/bead-form.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { DesignReading } from '../../../../shared-core/design/reading.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import type { Paper } from '../draw-list.ts'

/** Whom a sheet is for: the maker's own bench, a buyer, or the students of a class. */
export type Audience = 'self' | 'sale' | 'class'

/** The material chosen for a key of the bill, as the sheet names it. */
export type Filling = Readonly<{
  code: string
  name: string
  colourHex: string | null
  finish: BeadFinish | null
  drawer: string
  declaration: string
}>

/** All that a pattern sheet says, from the design, its reading and the colourway's materials. */
export type SheetData = Readonly<{
  audience: Audience
  paper: Paper
  name: string
  colourway: string
  version: number
  /** Of the workshop: name and how to reach it. */
  maker: string
  /** The day it was made, ready to print. */
  day: string
  decimal: DecimalMark
  tables: BeadTables
  body: DesignBody
  reading: DesignReading
  /** By key of the bill: `slot:A`, `extra:wire`, `thread`. */
  fillings: Readonly<Record<string, Filling | undefined>>
  /** The workshop's own caution, printed before ours; empty for none. */
  caution: string
  /** What the buyer may do with the sheet; empty for none. */
  terms: string
}>
