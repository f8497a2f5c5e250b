import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import { slotKey } from '../../../../shared-core/design/bill.ts'
import type { Format } from '../../../app/format.ts'

/** A colourway with what it costs and what stock allows. */
export type Standing = CallOutput<'colourways.list'>['colourways'][number]

/** What limits a colourway now, in one line; empty where nothing is missing that can be named. */
export function limitWords(
  { makeable, limits, unassigned }: Standing,
  unitName: string,
  format: Format,
): string {
  if (makeable === null) {
    return `${format.counted(unassigned.length, 'thing')} of a ${unitName} not chosen yet`
  }
  const [first, ...others] = limits
  if (first === undefined) return ''
  const { name, available, perUnit, unit } = first
  const more = others.length === 0 ? '' : `, and ${format.counted(others.length, 'other')}`
  const free = format.quantity(Math.max(0, available), unit)
  return `Limited by ${name}: ${free} free, ${format.quantity(perUnit, unit)} a ${unitName}${more}`
}

/** How much of two colourways' materials is bought in the one and in the other. */
export type MaterialDifference = Readonly<{
  materialId: string
  name: string
  /** Beads of it in a unit; 0 for what is no bead. */
  beads: readonly [number, number]
  /** Minor units; `null` where no cost is known. */
  costMinor: readonly [number | null, number | null]
}>

/** Materials in which two colourways differ, dearest difference first; those both take alike are left out. */
export function materialDifferences(
  [a, b]: readonly [Standing, Standing],
  countOf: (slotKey: string) => number,
): readonly MaterialDifference[] {
  const [one, other] = [totals(a, countOf), totals(b, countOf)]
  const ids = [...new Set([...one.keys(), ...other.keys()])]
  return ids
    .map((materialId) => {
      const [x, y] = [one.get(materialId), other.get(materialId)]
      return {
        materialId,
        name: x?.name ?? y?.name ?? '',
        beads: [x?.beads ?? 0, y?.beads ?? 0] as const,
        costMinor: [x?.costMinor ?? costOfNone(x), y?.costMinor ?? costOfNone(y)] as const,
      }
    })
    .filter(({ beads, costMinor }) => beads[0] !== beads[1] || costMinor[0] !== costMinor[1])
    .toSorted((x, y) => apart(y) - apart(x))
}

/** Nothing of a material costs nothing; some of it at a cost nobody knows is not known. */
function costOfNone(total: Total | undefined): number | null {
  return total === undefined ? 0 : null
}

type Total = { name: string; beads: number; costMinor: number | null }

function totals({ lines }: Standing, countOf: (key: string) => number): ReadonlyMap<string, Total> {
  const found = new Map<string, Total>()
  for (const { key, kind, materialId, materialName, costMinor } of lines) {
    if (materialId === null) continue
    const before = found.get(materialId) ?? { name: materialName ?? '', beads: 0, costMinor: 0 }
    found.set(materialId, {
      name: before.name,
      beads: before.beads + (kind === 'bead' ? countOf(key) : 0),
      costMinor:
        before.costMinor === null || costMinor === null ? null : before.costMinor + costMinor,
    })
  }
  return found
}

function apart({ costMinor: [x, y], beads }: MaterialDifference): number {
  return x === null || y === null ? Math.abs(beads[0] - beads[1]) : Math.abs(x - y)
}

/** Finds a slot's count by its key of the bill. */
export function countsByKey(
  counts: readonly Readonly<{ label: string; count: number }>[],
): (key: string) => number {
  const byKey = new Map(counts.map(({ label, count }) => [slotKey(label), count]))
  return (key) => byKey.get(key) ?? 0
}
