import type { ParsedInput } from '../../shared-core/contract/calls.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import type { KnownUse } from '../../shared-core/stock/book-use.ts'
import type { WorkBead } from './bench-beads.ts'
import { listMaterials } from './store/material-rows.ts'
import type { View } from './store/view.ts'

/** What was found of one bead material at the end of work. */
export type BeadFind = Readonly<{
  materialId: string
  unit: 'mg' | 'piece'
  use: KnownUse
  /** All that left its tube, in its unit; null where it was neither weighed nor counted. */
  whole: number | null
  /** Beads that went through the hand; null where culls were not counted. */
  handled: number | null
  culls: readonly Readonly<{ formId: string; handled: number; culled: number }>[]
}>

type Finds = Pick<ParsedInput<'bench.reckon'>, 'units' | 'culls' | 'weights'>

/** Puts together what was weighed and counted of one bead. */
export function findBead(bead: WorkBead, { units, culls, weights }: Finds): BeadFind {
  const { materialId, unit, slots, quantityOf } = bead
  const counted = slots.flatMap(({ label, formId, count }) => {
    const culled = culls[label]
    return culled === undefined ? [] : [{ formId, handled: units * count + culled, culled }]
  })
  const isCounted = counted.length === slots.length
  const good = quantityOf(slots.reduce((sum, { count }) => sum + units * count, 0))
  const culled = isCounted
    ? quantityOf(counted.reduce((sum, one) => sum + one.culled, 0))
    : undefined
  const weight = unit === 'mg' ? weights.find((one) => one.materialId === materialId) : undefined
  const used = weight && Math.max(0, weight.beforeMg - weight.afterMg)
  return {
    ...{ materialId, unit },
    use: {
      good,
      ...(culled === undefined ? {} : { culled }),
      ...(used === undefined ? {} : { used }),
    },
    whole: used ?? (culled === undefined ? null : good + culled),
    handled: isCounted ? counted.reduce((sum, one) => sum + one.handled, 0) : null,
    culls: counted,
  }
}

/** What is wrong with weights and culls, each fault with its field. */
export async function weightFaults(
  { trx }: View,
  beads: readonly WorkBead[],
  { weights, culls }: Finds,
): Promise<readonly Refusal[]> {
  const rows = new Map((await listMaterials(trx)).map((row) => [row.id, row]))
  const labels = new Set(beads.flatMap(({ slots }) => slots.map(({ label }) => label)))
  const strayCulls = Object.keys(culls).filter((label) => !labels.has(label))
  return [
    ...weights.flatMap(({ materialId, beforeMg, afterMg }, at) => {
      const row = rows.get(materialId)
      if (row === undefined || !beads.some((bead) => bead.materialId === materialId)) {
        return [notInWork(`weights.${at}.materialId`)]
      }
      const field = `weights.${at}.afterMg`
      if (afterMg > beforeMg) return [heavierAfter(row.name, field)]
      return afterMg < (row.tare_mg ?? 0) ? [lighterThanTube(row.name, field)] : []
    }),
    ...strayCulls.map((label) => notInWork(`culls.${label}`)),
  ]
}

function notInWork(field: string): Refusal {
  return {
    code: 'not-in-work',
    message: 'This work takes no such bead.',
    next: 'Weigh and count the beads of this design’s colourway.',
    field,
  }
}

function heavierAfter(name: string, field: string): Refusal {
  return {
    code: 'heavier-after',
    message: `The tube of ${name} weighs more after the work than before.`,
    next: 'Check the two weights, or leave both empty.',
    field,
  }
}

function lighterThanTube(name: string, field: string): Refusal {
  return {
    code: 'lighter-than-tube',
    message: `${name} weighs less than its empty tube.`,
    next: 'Check the weight, or correct the tare of the tube in Stock.',
    field,
  }
}
