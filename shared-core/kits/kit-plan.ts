import { assert } from '../assert.ts'
import type { BillLine } from '../design/bill.ts'
import type { MaterialUnit } from '../stock/material-unit.ts'

/** How kits are packed: whole percent added to beads and thread, and to findings and packaging. */
export type KitSpare = Readonly<{ beadsAndThreadPercent: number; extrasPercent: number }>

/** What workshops usually add: 15 % of beads and thread, no findings. @source trade practice, 10 to 15 % */
export const usualKitSpare: KitSpare = { beadsAndThreadPercent: 15, extrasPercent: 0 }

/** The label of one bag, alike in every kit: what goes in it, by count and by the material's unit. */
export type BagLabel = Readonly<{
  key: string
  /** The slot's letter for beads; absent for thread and extras. */
  slot?: string
  name: string
  materialId?: string
  unit: MaterialUnit
  quantity: number
  /** Beads or extras with the spare; absent for thread. */
  count?: number
}>

/** `kits` alike: what one kit needs, its bags, and what all need together. */
export type KitPlan = Readonly<{
  kits: number
  /** One kit's bill with the spare in it: plan a make of it for the movements, each colour of a kit from one lot. */
  bill: readonly BillLine[]
  bags: readonly BagLabel[]
  /** The bill times `kits`, in each line's own unit. */
  total: readonly BillLine[]
}>

/**
 * Kits of a design for a workshop: its bill times the kits, with a spare, and a bag label for each line.
 *
 * The spare is added to each kit and rounded up to whole beads, mg, mm or pieces; the total is that
 * times the kits, so that bags and total agree.
 *
 * @param bill of one unit (`billOfMaterials`)
 * @param kits whole, above 0
 * @param spare whole percents from 0 to 100
 * @example slot A 412 beads, 2102 mg, 15 % for 12 kits -> bags of 474 beads, 2418 mg; 29016 mg in all
 */
export function planKits(bill: readonly BillLine[], kits: number, spare: KitSpare): KitPlan {
  assert(Number.isSafeInteger(kits) && kits > 0, `whole kits above 0, got ${kits}`)
  const withSpare = bill.map((line) => addSpare(line, percentFor(line, spare)))
  return {
    kits,
    bill: withSpare,
    bags: withSpare.map(bagLabel),
    total: withSpare.map((line) => scaled(line, (quantity) => quantity * kits)),
  }
}

/**
 * Kits to pack for so many students: one spare kit for each ten begun.
 *
 * @source trade practice
 * @example kitsFor(12) -> 14
 */
export function kitsFor(students: number): number {
  return students + Math.ceil(students / 10)
}

function percentFor({ kind }: BillLine, spare: KitSpare): number {
  const percent =
    kind === 'bead' || kind === 'thread' ? spare.beadsAndThreadPercent : spare.extrasPercent
  const isWhole = Number.isSafeInteger(percent) && percent >= 0 && percent <= 100
  assert(isWhole, `a spare of whole percents from 0 to 100, got ${percent}`)
  return percent
}

function addSpare(line: BillLine, percent: number): BillLine {
  return scaled(line, (quantity) => Math.ceil((quantity * (100 + percent)) / 100))
}

function scaled(line: BillLine, scale: (quantity: number) => number): BillLine {
  return {
    ...line,
    ...(line.count !== undefined && { count: scale(line.count) }),
    quantity: scale(line.quantity),
    low: scale(line.low),
    high: scale(line.high),
  }
}

function bagLabel({ key, kind, name, material, unit, quantity, count }: BillLine): BagLabel {
  return {
    key,
    ...(kind === 'bead' && { slot: key.slice('slot:'.length) }),
    name,
    ...(material && { materialId: material.materialId }),
    unit,
    quantity,
    ...(count !== undefined && { count }),
  }
}
