import type { DesignBody, Panel, Part } from '../design.ts'
import type { PartPiece, PiecesEdit, Stroke } from './body-edit.ts'

/**
 * The stroke that leads from one body to another: only the pieces that differ are in it. A chart that
 * is the same object is left out.
 */
export function bodyStroke(label: string, before: DesignBody, after: DesignBody): Stroke {
  return { label, redo: [piecesEdit(before, after)], undo: [piecesEdit(after, before)] }
}

/** The change that makes `after` of `before`; see `PiecesEdit`. */
export function piecesEdit(before: DesignBody, after: DesignBody): PiecesEdit {
  const parts = changedParts(before.parts, after.parts)
  const order = after.parts.map(({ id }) => id)
  const isOrderSame = sameValue(
    order,
    before.parts.map(({ id }) => id),
  )
  return {
    kind: 'pieces',
    ...(after.unitName === before.unitName ? {} : { unitName: after.unitName }),
    ...(sameValue(after.palette, before.palette) ? {} : { palette: after.palette }),
    ...(sameValue(after.extras, before.extras) ? {} : { extras: after.extras }),
    ...(after.threadId === before.threadId ? {} : { threadId: after.threadId }),
    ...(after.threadStrands === before.threadStrands
      ? {}
      : { threadStrands: after.threadStrands ?? null }),
    ...(after.needleSize === before.needleSize ? {} : { needleSize: after.needleSize }),
    ...(after.setUpS === before.setUpS ? {} : { setUpS: after.setUpS ?? null }),
    ...(after.finishingS === before.finishingS ? {} : { finishingS: after.finishingS ?? null }),
    ...(isOrderSame ? {} : { order }),
    ...(parts.length === 0 ? {} : { parts }),
  }
}

function changedParts(before: readonly Part[], after: readonly Part[]): readonly PartPiece[] {
  const known = new Map(before.map((part) => [part.id, part]))
  return after.flatMap((part) => {
    const old = known.get(part.id)
    if (old === part) return []
    if (part.kind === 'strand' || old?.kind !== 'panel') return sameValue(old, part) ? [] : [part]
    return changedPanel(old, part)
  })
}

function changedPanel(old: Panel, panel: Panel): readonly PartPiece[] {
  const { chart: oldChart, ...oldRest } = old
  const { chart, ...rest } = panel
  const isChartSame = chart === oldChart || sameValue(chart, oldChart)
  if (!isChartSame) return [panel]
  return sameValue(rest, oldRest) ? [] : [rest]
}

/** Whether two plain values hold the same, whatever the order of their keys. */
function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  const [keysA, keysB] = [Object.keys(a), Object.keys(b)]
  return (
    keysA.length === keysB.length &&
    Array.isArray(a) === Array.isArray(b) &&
    keysA.every((key) => Object.hasOwn(b, key) && sameValue(valueAt(a, key), valueAt(b, key)))
  )
}

function valueAt(value: object, key: string): unknown {
  return (value as Record<string, unknown>)[key]
}
