import { fromChartJson } from '../chart/chart-json.ts'
import { compareCharts } from '../chart/compare-charts.ts'
import type { DesignBody, Extra, PaletteSlot, Panel, Part, RouteSettings } from './design.ts'
import type { BodyField, DesignChange, PartField, SlotField, Turned } from './design-change.ts'

const BODY_FIELDS: readonly BodyField[] = [
  'unitName',
  'threadId',
  'threadStrands',
  'needleSize',
  'setUpS',
  'finishingS',
]
const SLOT_FIELDS: readonly SlotField[] = ['name', 'formId', 'colourHex', 'finish']
const ROUTE_SETTINGS: readonly (keyof RouteSettings)[] = [
  'startRow',
  'startSide',
  'start',
  'lockEveryRow',
  'reinforce',
  'loopPasses',
  'startTailMm',
  'endTailMm',
  'workingLengthMm',
]

/**
 * What differs between two versions of a design: the unit, thread and needle, then the palette, the
 * parts with their charts and how they are worked, then findings and packaging.
 *
 * Parts and extras are matched by id, slots by letter; a part whose kind changed is one removed and
 * one added. Charts by `compareCharts`. Whole values, no tolerance; seconds and mm as the body has them.
 *
 * @returns nothing for two bodies that say the same.
 * @throws RangeError for a chart that cannot be read: a damaged store.
 */
export function compareDesigns(before: DesignBody, after: DesignBody): readonly DesignChange[] {
  return [
    ...BODY_FIELDS.flatMap((field) => {
      const turned = turnOf(before[field], after[field])
      return turned === undefined ? [] : [{ kind: 'body' as const, field, ...turned }]
    }),
    ...compareLists(before.palette, after.palette, ({ label }) => label, compareSlots),
    ...compareLists(before.parts, after.parts, partKey, compareParts),
    ...movedParts(before.parts, after.parts),
    ...compareLists(before.extras, after.extras, ({ id }) => id, compareExtras),
  ]
}

type Pair<T> = Readonly<{ from: T | undefined; to: T | undefined }>

/** Compares two lists entry by entry: first what is there in the later, in its order, then what is gone. */
function compareLists<T>(
  before: readonly T[],
  after: readonly T[],
  keyOf: (entry: T) => string,
  compare: (pair: Pair<T>) => readonly DesignChange[],
): readonly DesignChange[] {
  const old = new Map(before.map((entry) => [keyOf(entry), entry]))
  const now = new Set(after.map(keyOf))
  return [
    ...after.flatMap((to) => compare({ from: old.get(keyOf(to)), to })),
    ...before
      .filter((from) => !now.has(keyOf(from)))
      .flatMap((from) => compare({ from, to: undefined })),
  ]
}

function compareSlots({ from, to }: Pair<PaletteSlot>): readonly DesignChange[] {
  const { label = '', name = '' } = to ?? from ?? {}
  if (from === undefined) return [{ kind: 'slot-added', label, name }]
  if (to === undefined) return [{ kind: 'slot-removed', label, name }]
  return SLOT_FIELDS.flatMap((field) => {
    const turned = turnOf(from[field], to[field])
    return turned === undefined ? [] : [{ kind: 'slot' as const, label, field, ...turned }]
  })
}

function partKey({ kind, id }: Part): string {
  return `${kind} ${id}`
}

function compareParts({ from, to }: Pair<Part>): readonly DesignChange[] {
  const { id: partId = '', name = '' } = to ?? from ?? {}
  if (from === undefined) return [{ kind: 'part-added', partId, name }]
  if (to === undefined) return [{ kind: 'part-removed', partId, name }]
  const [old, now] = [fieldsOf(from), fieldsOf(to)]
  const fields = [...new Set([...Object.keys(now), ...Object.keys(old)])] as readonly PartField[]
  const changes: readonly DesignChange[] = fields.flatMap((field) => {
    const turned = turnOf(old[field], now[field])
    return turned === undefined ? [] : [{ kind: 'part' as const, partId, name, field, ...turned }]
  })
  if (from.kind !== 'panel' || to.kind !== 'panel') return changes
  return [...changes, ...comparePanels(from, to)]
}

function comparePanels(from: Panel, to: Panel): readonly DesignChange[] {
  const { id: partId, name } = to
  const difference = compareCharts(fromChartJson(from.chart), fromChartJson(to.chart))
  return [
    ...(difference.isSame ? [] : [{ kind: 'chart' as const, partId, name, difference }]),
    ...ROUTE_SETTINGS.flatMap((setting) => {
      const turned = turnOf(from.route[setting], to.route[setting])
      return turned === undefined
        ? []
        : [{ kind: 'route' as const, partId, name, setting, ...turned }]
    }),
  ]
}

function fieldsOf(
  part: Part,
): Readonly<{ [F in PartField]?: string | number | boolean | undefined }> {
  const { name, copies } = part
  if (part.kind === 'panel') return { name, formId: part.formId, copies, mirrored: part.mirrored }
  const { shape, beads, findingId, anchor } = part
  const hangs = anchor && `${anchor.panelId} ${anchor.row}/${anchor.bead}`
  return { name, copies, shape, beads, findingId, anchor: hangs }
}

/** Whether the parts that both have stand in another order. */
function movedParts(before: readonly Part[], after: readonly Part[]): readonly DesignChange[] {
  const [old, now] = [before.map(partKey), after.map(partKey)]
  const [kept, stayed] = [now.filter((k) => old.includes(k)), old.filter((k) => now.includes(k))]
  return kept.every((key, at) => key === stayed[at]) ? [] : [{ kind: 'parts-moved' }]
}

function compareExtras({ from, to }: Pair<Extra>): readonly DesignChange[] {
  const { name = '', count = 0 } = to ?? from ?? {}
  if (from === undefined) return [{ kind: 'extra-added', name, count }]
  if (to === undefined) return [{ kind: 'extra-removed', name, count }]
  return (['name', 'kind', 'count'] as const).flatMap((field) => {
    const turned = turnOf(from[field], to[field])
    return turned === undefined ? [] : [{ kind: 'extra' as const, name, field, ...turned }]
  })
}

function turnOf<T>(from: T | undefined, to: T | undefined): Turned<T> | undefined {
  return from === to ? undefined : { from, to }
}
