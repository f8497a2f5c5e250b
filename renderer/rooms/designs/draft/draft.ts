import type { ChartJson } from '../../../../shared-core/chart/chart-json.ts'
import type {
  DesignBody,
  Extra,
  PaletteSlot,
  Strand,
} from '../../../../shared-core/design/design.ts'
import { firstPalette } from './first-palette.ts'

/** What one unit of a design is: two alike, or one. */
export type UnitShape = 'pair' | 'one'

/** What a maker says of a new chart before it is a design. */
export type Draft = Readonly<{
  name: string
  /** As typed, parted by commas. */
  tags: string
  shape: UnitShape
  unitName: string
  mirrored: boolean
  formId: string
  threadId: string
  needleSize: string
  extras: readonly Extra[]
}>

const earWire: Extra = { id: 'wire', kind: 'finding', name: 'Ear wire', count: 2 }
const card: Extra = { id: 'card', kind: 'packaging', name: 'Card', count: 1 }

/** A pair of earrings in the commonest bead, thread and needle. */
export const firstDraft: Draft = {
  name: '',
  tags: '',
  shape: 'pair',
  unitName: 'pair',
  mirrored: false,
  formId: 'cylinder-11/0',
  threadId: 'braided-6lb',
  needleSize: '12',
  extras: [earWire, card],
}

/** The draft as a pair or as one piece; findings nobody has touched follow. */
export function withShape(draft: Draft, shape: UnitShape): Draft {
  const isFirst = draft.extras === firstDraft.extras
  const wasNamed = draft.unitName !== 'pair' && draft.unitName !== 'piece'
  return {
    ...draft,
    shape,
    unitName: wasNamed ? draft.unitName : shape === 'pair' ? 'pair' : 'piece',
    mirrored: shape === 'pair' && draft.mirrored,
    extras: isFirst && shape === 'one' ? [card] : draft.extras,
  }
}

/** The tags that were typed, each once. */
export function readTags(text: string): string[] {
  const tags = text.split(',').map((tag) => tag.trim().slice(0, 40))
  return [...new Set(tags.filter((tag) => tag !== ''))].slice(0, 20)
}

/** What a way in knows beside the chart: its colours, and strands that hang from it. */
export type DraftAdditions = Readonly<{
  palette?: readonly PaletteSlot[] | undefined
  strands?: readonly Strand[] | undefined
}>

/** The id of a draft's one panel, for strands to hang from. */
export const DRAFT_PANEL = 'panel'

/** The design that a chart becomes. */
export function draftBody(
  chart: ChartJson,
  draft: Draft,
  { palette, strands = [] }: DraftAdditions = {},
): DesignBody {
  return {
    unitName: draft.unitName.trim() || 'piece',
    palette:
      palette ??
      firstPalette(
        [...chart.rows.map(({ cells }) => cells), ...strands.map(({ beads }) => beads)],
        draft.formId,
      ),
    parts: [
      {
        kind: 'panel',
        id: DRAFT_PANEL,
        name: 'Panel',
        chart,
        formId: draft.formId,
        copies: draft.shape === 'pair' ? 2 : 1,
        mirrored: draft.mirrored,
        route: {},
      },
      ...strands,
    ],
    extras: draft.extras.filter(({ name }) => name.trim() !== ''),
    threadId: draft.threadId,
    needleSize: draft.needleSize,
  }
}
