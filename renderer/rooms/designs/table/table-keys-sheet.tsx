import { KeyList, type Keys } from '../../../ui/key-list.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { tableActs } from './table-acts.ts'
import { tools } from './tools.ts'

const crosshair: readonly Keys[] = [
  { keys: '← ↑ → ↓', does: 'Move the crosshair' },
  { keys: 'Shift ← →', does: 'Draw with the tool while moving' },
  { keys: 'Space', does: 'Use the tool here; line, rectangle and select: begin, then end' },
  { keys: 'Home, End', does: 'First, last bead of the row' },
  { keys: 'Ctrl Home', does: 'First row; Ctrl End the last' },
  { keys: 'Page up', does: 'Ten rows up; Page down ten rows down' },
  { keys: '1 to 9', does: 'Choose a slot' },
  { keys: '[ ]', does: 'The slot before, the slot after' },
  { keys: 'M', does: 'The next way to mirror' },
  { keys: 'Esc', does: 'Leave the stroke or the selection' },
]

const selection: readonly Keys[] = [
  { keys: 'Ctrl C, X, V', does: 'Copy, cut, paste at the crosshair' },
  { keys: 'Ctrl A', does: 'Select everything' },
  { keys: 'Alt ← →', does: 'Move the selection by a bead; Alt ↑ ↓ by a row' },
  { keys: 'Delete', does: 'Take the beads away' },
]

const drawing: readonly Keys[] = [
  { keys: 'Ctrl Z', does: 'Undo, as far back as you like' },
  { keys: 'Ctrl Shift Z', does: 'Redo; Ctrl Y too' },
  { keys: 'Ctrl S', does: 'Save a version' },
  { keys: 'W', does: 'Fold palette and figures away, or show them' },
  { keys: '+ − 0', does: 'Nearer, farther, all of it' },
]

/** Every key of the drawing table. */
export function TableKeysSheet({ onClose }: Readonly<{ onClose: () => void }>) {
  return (
    <SideSheet open title="Keys of the drawing table" onClose={onClose}>
      <KeyList
        title="Tools"
        keys={tools.map(({ key, label, does }) => ({ keys: key, does: `${label}: ${does}` }))}
      />
      <KeyList title="Crosshair" keys={crosshair} />
      <KeyList title="Selection" keys={selection} />
      <KeyList
        title="Rows and columns"
        keys={tableActs.flatMap(({ key, label }) =>
          key === undefined ? [] : [{ keys: key, does: label }],
        )}
      />
      <KeyList title="Drawing" keys={drawing} />
    </SideSheet>
  )
}
