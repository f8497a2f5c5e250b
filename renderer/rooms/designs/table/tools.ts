import { slotLabel } from '../../../../shared-core/chart/chart.ts'
import type { IconName } from '../../../ui/icon-paths.ts'

/** What the left button, the pen or the space bar does. */
export type ToolName =
  | 'paint'
  | 'erase'
  | 'line'
  | 'box'
  | 'frame'
  | 'fill'
  | 'replace'
  | 'pick'
  | 'select'
  | 'move-picture'

export type Tool = Readonly<{
  name: ToolName
  label: string
  key: string
  icon: IconName
  /** What it does, for the sheet of keys. */
  does: string
}>

/** The tools in the order they stand in, each with its key. */
export const tools: readonly Tool[] = [
  { name: 'paint', label: 'Paint', key: 'P', icon: 'brush', does: 'Set beads of the chosen slot' },
  {
    name: 'erase',
    label: 'Take away',
    key: 'E',
    icon: 'eraser',
    does: 'Leave a place without a bead',
  },
  { name: 'line', label: 'Line', key: 'L', icon: 'line', does: 'A straight line of beads' },
  { name: 'box', label: 'Rectangle', key: 'B', icon: 'box', does: 'A rectangle full of beads' },
  { name: 'frame', label: 'Frame', key: 'O', icon: 'frame', does: 'The edge of a rectangle' },
  { name: 'fill', label: 'Fill', key: 'F', icon: 'drop', does: 'Fill a patch of one slot' },
  {
    name: 'replace',
    label: 'Replace',
    key: 'R',
    icon: 'swap',
    does: 'Every bead of one slot at once',
  },
  { name: 'pick', label: 'Pick slot', key: 'K', icon: 'pick', does: 'Choose the slot of a bead' },
  {
    name: 'select',
    label: 'Select',
    key: 'S',
    icon: 'select',
    does: 'Choose a rectangle, drag it to move it',
  },
  {
    name: 'move-picture',
    label: 'Move picture',
    key: 'H',
    icon: 'hand',
    does: 'Drag to move what is seen',
  },
]

/** The tool a key chooses. */
export function toolOfKey(key: string): ToolName | undefined {
  return tools.find((tool) => tool.key === key.toUpperCase())?.name
}

/** How strokes are mirrored in the middle of the chart while they are drawn. */
export type MirrorWay = 'none' | 'left-right' | 'top-bottom' | 'four-ways'

export const mirrorWays: readonly Readonly<{ value: MirrorWay; label: string }>[] = [
  { value: 'none', label: 'No mirror' },
  { value: 'left-right', label: 'Left and right' },
  { value: 'top-bottom', label: 'Top and bottom' },
  { value: 'four-ways', label: 'Both ways' },
]

/** The way after this one, for the key that goes through them. */
export function nextMirror(way: MirrorWay): MirrorWay {
  const at = mirrorWays.findIndex(({ value }) => value === way)
  return mirrorWays[(at + 1) % mirrorWays.length]?.value ?? 'none'
}

/** What a stroke of a tool is called in undo: `Line in B`. */
export function strokeLabel(tool: ToolName, slot: number): string {
  const label = tools.find(({ name }) => name === tool)?.label ?? ''
  if (tool === 'erase') return label
  return tool === 'paint' ? `Paint ${slotLabel(slot)}` : `${label} in ${slotLabel(slot)}`
}
