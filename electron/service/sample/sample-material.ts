import type { BeadFinish } from '../../../shared-core/beads/bead-form.ts'
import type { SampleSupplierKey } from './suppliers.ts'

/** A lot: dye lot, quantity in the material's unit, days before the workshop's first day it was bought, what it cost in minor units. */
export type SampleLot = readonly [
  dyeLot: string,
  quantity: number,
  daysAgo: number,
  costMinor: number,
]

/** A material of the sample, as it is bought and where it lies. */
export type SampleMaterial = Readonly<{
  code: string
  name: string
  kind: 'bead' | 'thread' | 'finding' | 'packaging'
  formId: string | null
  colourHex: string | null
  finish: BeadFinish | null
  lowAt: number | null
  drawer: string
  supplier: SampleSupplierKey
  /** Pack quantity in the material's unit and its price in minor units. */
  pack: readonly [quantity: number, priceMinor: number]
  lots: readonly SampleLot[]
  declaration?: string
  note?: string
}>

/** What only beads always have; thread tells its form and colour itself. */
export const piece = { formId: null, colourHex: null, finish: null } as const
