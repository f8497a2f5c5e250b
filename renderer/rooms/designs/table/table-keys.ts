import type { KeyboardEvent } from 'react'
import { actOfKey } from './table-acts.ts'
import type { TableModel } from './table-model.ts'
import { mirrorWays, nextMirror, toolOfKey } from './tools.ts'

/** What keys ask of the screen and not of the drawing. */
export type TableKeyActs = Readonly<{
  onSave: () => void
  onKeys: () => void
  onWide: () => void
}>

/** Rows that Page up and Page down go. */
const PAGE_ROWS = 10

/** Does what a key asks for while the picture has the focus; true when the key was ours. */
export function answerPictureKey(model: TableModel, event: KeyboardEvent): boolean {
  const { key, ctrlKey, metaKey, shiftKey, altKey } = event
  const isCommand = ctrlKey || metaKey
  const step = STEPS[key]
  if (step !== undefined && !isCommand) {
    const [rows, beads] = step
    if (altKey) model.nudge(rows, beads)
    else model.step(rows, beads, shiftKey)
    return true
  }
  switch (key) {
    case 'Home':
      model.goTo(isCommand ? 'top' : 'row-start')
      return true
    case 'End':
      model.goTo(isCommand ? 'bottom' : 'row-end')
      return true
    case ' ':
    case 'Enter':
      if (isCommand || altKey) return false
      model.press()
      return true
    case 'Escape':
      if (!model.isBusy) return false
      model.cancel()
      return true
    case 'Delete':
    case 'Backspace':
      model.remove()
      return true
    default:
      return false
  }
}

const STEPS: Readonly<Record<string, readonly [rows: number, beads: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  PageUp: [-PAGE_ROWS, 0],
  PageDown: [PAGE_ROWS, 0],
}

/** Does what a key asks for anywhere on the table but in a text field; true when the key was ours. */
export function answerTableKey(
  model: TableModel,
  event: KeyboardEvent,
  { onSave, onKeys, onWide }: TableKeyActs,
): boolean {
  const { key, ctrlKey, metaKey, altKey } = event
  if (ctrlKey || metaKey) return answerCommand(model, key.toLowerCase(), onSave)
  if (altKey || key.length !== 1) return false
  if (key === '?') {
    onKeys()
    return true
  }
  if (key === 'w' || key === 'W') {
    onWide()
    return true
  }
  if (/^[1-9]$/.test(key)) {
    model.chooseSlot(Number(key) - 1)
    return true
  }
  if (key === '[' || key === ']') {
    model.chooseSlot(model.view().slot + (key === '[' ? -1 : 1))
    return true
  }
  if (key === 'm' || key === 'M') {
    const way = nextMirror(model.view().mirror)
    model.chooseMirror(way, mirrorWays.find(({ value }) => value === way)?.label ?? '')
    return true
  }
  const tool = toolOfKey(key)
  if (tool !== undefined) {
    model.chooseTool(tool)
    return true
  }
  const act = actOfKey(key)
  if (act === undefined) return false
  model.act(act)
  return true
}

function answerCommand(model: TableModel, key: string, onSave: () => void): boolean {
  const acts: Readonly<Record<string, () => void>> = {
    c: () => model.copy(),
    x: () => model.cut(),
    v: () => model.paste(),
    a: () => model.selectAll(),
    s: onSave,
  }
  const act = Object.hasOwn(acts, key) ? acts[key] : undefined
  act?.()
  return act !== undefined
}
