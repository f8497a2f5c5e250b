import { assert } from '../assert.ts'
import type { MaterialUnit } from '../stock/material-unit.ts'
import type { Basis, Spread } from '../units/spread.ts'
import type { DesignBody, Extra } from './design.ts'
import type { DesignReading, SlotCount } from './reading.ts'

/** What a line of the bill stands for; decides the units its material may be counted in. */
export type BillKind = 'bead' | 'thread' | 'finding' | 'packaging'

/** What the bill must know of the material that fills a key. `lotsMatter`: its lots are not mixed within a unit. */
export type MaterialFacts = Readonly<{
  materialId: string
  unit: MaterialUnit
  lotsMatter: boolean
}>

/** Materials by key of the bill: `slot:A`, `extra:<id>`, `thread`. A key may be absent until a material is chosen. */
export type MaterialsByKey = Readonly<Record<string, MaterialFacts | undefined>>

/**
 * One key's need for one unit of a design.
 *
 * `quantity`, `low` and `high` are whole and in `unit`: what must be at hand, culls and thread ends
 * included. `count` is what stays in the piece: beads or extras, exactly; absent for thread.
 */
export type BillLine = Readonly<{
  key: string
  kind: BillKind
  name: string
  unit: MaterialUnit
  count?: number
  quantity: number
  low: number
  high: number
  basis: Basis
  /** Absent until a material is chosen for the key. */
  material?: MaterialFacts
}>

const UNITS: Readonly<Record<BillKind, readonly MaterialUnit[]>> = {
  bead: ['mg', 'piece'],
  thread: ['mm'],
  finding: ['piece'],
  packaging: ['piece'],
}

/** Units a material may be counted in to fill a line of this kind; beads by mass, or by the piece as large ones are sold. */
export function unitsFor(kind: BillKind): readonly MaterialUnit[] {
  return UNITS[kind]
}

/** The key of a palette slot: `slot:A`. */
export function slotKey(label: string): string {
  return `slot:${label}`
}

/** The key of a finding or packaging item: `extra:<id>`. */
export function extraKey(extraId: string): string {
  return `extra:${extraId}`
}

/** The key of the design's thread. */
export const threadKey = 'thread'

/**
 * What one unit of a design needs, key by key: slots in order of the palette, then thread, then extras.
 *
 * Counts, masses and lengths are the reading's own; here they only become whole quantities, rounded
 * up once. Slots without beads and extras with a count of 0 have no line. Beads counted by the piece
 * get the same share of culls as the reading's mass: count x needMg / massMg.
 *
 * @throws Error when a key is filled with a material in a unit its kind cannot have (see `unitsFor`):
 *   the choice of materials is checked where it is made.
 * @example slot A, 412 beads, needMg 2101.02 -> { key: 'slot:A', count: 412, quantity: 2102, unit: 'mg' }
 */
export function billOfMaterials(
  reading: Pick<DesignReading, 'counts' | 'thread'>,
  body: Pick<DesignBody, 'palette' | 'extras'>,
  materials: MaterialsByKey,
): readonly BillLine[] {
  const slots = reading.counts
    .filter((slot) => slot.count > 0)
    .map((slot) => slotLine(slot, body, materials[slotKey(slot.label)]))
  const thread = line(
    { key: threadKey, kind: 'thread', name: 'Thread', unit: 'mm', material: materials[threadKey] },
    reading.thread.spoolMm,
  )
  const extras = body.extras
    .filter((extra) => extra.count > 0)
    .map((extra) => extraLine(extra, materials[extraKey(extra.id)]))
  return [...slots, ...(thread.quantity > 0 ? [thread] : []), ...extras]
}

function slotLine(
  slot: SlotCount,
  body: Pick<DesignBody, 'palette'>,
  material?: MaterialFacts,
): BillLine {
  const name = body.palette.find((entry) => entry.label === slot.label)?.name ?? slot.label
  const unit = material?.unit ?? 'mg'
  const need = unit === 'piece' ? piecesWithCulls(slot) : slot.needMg
  const key = slotKey(slot.label)
  return line({ key, kind: 'bead', name, unit, material, count: slot.count }, need)
}

function piecesWithCulls({ count, massMg, needMg }: SlotCount): Spread {
  const share = (need: number, mass: number) => (mass > 0 ? (count * need) / mass : count)
  const all = [
    share(needMg.low, massMg.low),
    share(needMg.value, massMg.value),
    share(needMg.high, massMg.high),
  ]
  return {
    value: share(needMg.value, massMg.value),
    low: Math.min(...all),
    high: Math.max(...all),
    basis: needMg.basis,
  }
}

function extraLine(extra: Extra, material?: MaterialFacts): BillLine {
  const { id, kind, name, count } = extra
  const need: Spread = { value: count, low: count, high: count, basis: 'exact' }
  return line({ key: extraKey(id), kind, name, unit: 'piece', material, count }, need)
}

type Head = Readonly<{
  key: string
  kind: BillKind
  name: string
  unit: MaterialUnit
  material: MaterialFacts | undefined
  count?: number
}>

/** Written out field by field: covering all orders writes thousands of these. */
function line(head: Head, need: Spread): BillLine {
  const { key, kind, name, unit, material, count } = head
  if (material) {
    const fits = unitsFor(kind).includes(material.unit)
    assert(fits, `${key}: a ${kind} is not counted in ${material.unit}`)
  }
  const quantity = roundUp(need.value)
  const low = Math.floor(need.low)
  const high = roundUp(need.high)
  const written: BillLine = { key, kind, name, unit, quantity, low, high, basis: need.basis }
  if (material && count !== undefined) return { ...written, count, material }
  if (material) return { ...written, material }
  return count === undefined ? written : { ...written, count }
}

/** Up to the next whole unit; a billionth part over a whole number is the noise of binary fractions. */
function roundUp(value: number): number {
  return Math.ceil(value - 1e-9 * Math.max(1, value))
}
