import {
  type ColourDifference,
  colourDifference,
} from '../../../../shared-core/colour/colour-difference.ts'
import { labOfHex } from '../../../../shared-core/colour/lab.ts'
import { type ColouredBead, nearestBeads } from '../../../../shared-core/colour/nearest-beads.ts'
import type { MaterialRow } from '../page/open-design.ts'
import type { SlotBead } from '../page/slot-beads.ts'

/** A bead of stock that could stand in, how far its colour is, and what a unit would take of it. */
export type NearBead = Readonly<{
  material: MaterialRow
  deltaE: number
  difference: ColourDifference
  isSameFinish: boolean
  /** What a unit's beads of it would cost, minor units; absent where its cost is not known. */
  costMinor: number | undefined
}>

/** Beads shown beside a slot: more than these are found by name. */
const MOST = 6

/** The beads of stock nearest in colour to what fills a slot, of the same form, by CIEDE2000 and finish. */
export function nearBeads(
  { slot, material, hex, finish }: SlotBead,
  materials: readonly MaterialRow[],
  needMg: number,
): readonly NearBead[] {
  const wanted = {
    id: material?.id ?? '',
    formId: material?.formId ?? slot.formId,
    lab: labOfHex(hex),
    finish,
  }
  return nearestBeads(wanted, materials.flatMap(toColoured), MOST).map(({ bead, deltaE }) => ({
    material: bead.material,
    deltaE,
    difference: colourDifference(deltaE),
    isSameFinish: bead.finish === finish,
    costMinor: costOf(bead.material, needMg),
  }))
}

type StockBead = ColouredBead & Readonly<{ material: MaterialRow }>

function toColoured(material: MaterialRow): readonly StockBead[] {
  const { id, kind, formId, colourHex, finish } = material
  if (kind !== 'bead' || formId === null || colourHex === null) return []
  return [{ id, formId, lab: labOfHex(colourHex), finish: finish ?? 'opaque', material }]
}

/** The value of so many mg at what the stock of it is worth now. */
function costOf({ unit, onHand, valueMinor }: MaterialRow, needMg: number): number | undefined {
  if (unit !== 'mg' || onHand <= 0 || valueMinor <= 0) return undefined
  return Math.round((needMg * valueMinor) / onHand)
}

const WORDS: Readonly<Record<ColourDifference, string>> = {
  unseen: 'looks the same',
  barely: 'barely another',
  near: 'near',
  seen: 'seen at a glance',
  other: 'another colour',
}

/** A colour difference in words and as its number: `near, 3.4`. */
export function differenceWords(
  { difference, deltaE }: Pick<NearBead, 'difference' | 'deltaE'>,
  writeNumber: (text: string) => string,
): string {
  return `${WORDS[difference]}, ${writeNumber(deltaE.toFixed(1))}`
}
