import type { ChartJson } from '../../chart/chart-json.ts'
import { applyPatchJson, type ChartPatchJson } from '../../chart/edits/patch-json.ts'
import type { Refusal } from '../../refusal.ts'
import { err, ok, type Result } from '../../result.ts'
import type { DesignBody, Panel, Part, Strand } from '../design.ts'

/** A change of one panel's chart. */
export type PanelEdit = Readonly<{ kind: 'chart'; partId: string; patch: ChartPatchJson }>

/** A part that is new or changed; a panel without a chart keeps the one it has. */
export type PartPiece = Strand | (Omit<Panel, 'chart'> & Readonly<{ chart?: ChartJson }>)

/**
 * A change of anything else in a body. What is absent stays; `null` takes a time or the strands away. `order` lists
 * the ids of all parts when one comes, goes or moves; `parts` holds those that are new or changed.
 */
export type PiecesEdit = Readonly<{
  kind: 'pieces'
  unitName?: string
  palette?: DesignBody['palette']
  extras?: DesignBody['extras']
  threadId?: string
  threadStrands?: 1 | 2 | null
  needleSize?: string
  setUpS?: number | null
  finishingS?: number | null
  order?: readonly string[]
  parts?: readonly PartPiece[]
}>

/** A change of a design's body as it is stored. */
export type BodyEdit = PanelEdit | PiecesEdit

/** One stroke of the drawing table: what it is called, how it is done and how it is taken back. */
export type Stroke = Readonly<{
  label: string
  redo: readonly BodyEdit[]
  undo: readonly BodyEdit[]
}>

/**
 * Applies changes one after the other.
 *
 * Rows and parts that stay are shared. @returns The body, or `stroke-misfit` when a change belongs to
 * another body: a part that is not there, or a patch past its chart.
 */
export function applyEdits(
  body: DesignBody,
  edits: readonly BodyEdit[],
): Result<DesignBody, Refusal> {
  let changed = body
  for (const edit of edits) {
    const next = edit.kind === 'chart' ? withPatch(changed, edit) : withPieces(changed, edit)
    if (next === undefined) return err(misfit)
    changed = next
  }
  return ok(changed)
}

const misfit: Refusal = {
  code: 'stroke-misfit',
  message: 'A stroke does not belong to the drawing as it stands.',
  next: 'Open the drawing again; it stands as it was last kept.',
}

function withPatch(body: DesignBody, { partId, patch }: PanelEdit): DesignBody | undefined {
  const panel = body.parts.find(({ id }) => id === partId)
  if (panel?.kind !== 'panel') return undefined
  const chart = applyPatchJson(panel.chart, patch)
  if (chart === undefined) return undefined
  const parts = body.parts.map((part) => (part === panel ? { ...panel, chart } : part))
  return { ...body, parts }
}

function withPieces(body: DesignBody, edit: PiecesEdit): DesignBody | undefined {
  const parts = partsAfter(body.parts, edit)
  if (parts === undefined) return undefined
  const threadStrands = edit.threadStrands === undefined ? body.threadStrands : edit.threadStrands
  const setUpS = edit.setUpS === undefined ? body.setUpS : edit.setUpS
  const finishingS = edit.finishingS === undefined ? body.finishingS : edit.finishingS
  return {
    unitName: edit.unitName ?? body.unitName,
    palette: edit.palette ?? body.palette,
    parts,
    extras: edit.extras ?? body.extras,
    threadId: edit.threadId ?? body.threadId,
    ...(threadStrands === undefined || threadStrands === null ? {} : { threadStrands }),
    needleSize: edit.needleSize ?? body.needleSize,
    ...(setUpS === undefined || setUpS === null ? {} : { setUpS }),
    ...(finishingS === undefined || finishingS === null ? {} : { finishingS }),
  }
}

function partsAfter(
  before: readonly Part[],
  { order, parts = [] }: PiecesEdit,
): readonly Part[] | undefined {
  const known = new Map(before.map((part) => [part.id, part]))
  for (const piece of parts) {
    const part = wholePart(piece, known.get(piece.id))
    if (part === undefined) return undefined
    known.set(piece.id, part)
  }
  const after = (order ?? before.map(({ id }) => id)).map((id) => known.get(id))
  return after.some((part) => part === undefined) ? undefined : (after as Part[])
}

/** Keys in the order of the contract, so that equal bodies are written alike. */
function wholePart(piece: PartPiece, before: Part | undefined): Part | undefined {
  if (piece.kind === 'strand') return piece
  const chart = piece.chart ?? (before?.kind === 'panel' ? before.chart : undefined)
  if (chart === undefined) return undefined
  const { kind, id, name, formId, copies, mirrored, route } = piece
  return { kind, id, name, chart, formId, copies, mirrored, route }
}
