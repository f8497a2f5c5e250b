import { KeyList, type Keys } from '../ui/key-list.tsx'
import { SideSheet } from '../ui/side-sheet.tsx'
import { rooms } from './rooms.ts'

const everywhere: readonly Keys[] = [
  { keys: 'Ctrl K', does: 'Find anything' },
  { keys: 'Ctrl Z', does: 'Undo the last step' },
  { keys: 'Ctrl Shift Z', does: 'Do it again' },
  { keys: '?', does: 'Show these keys' },
  { keys: 'Esc', does: 'Close what is open' },
]

const tables: readonly Keys[] = [
  { keys: '↑ ↓', does: 'Move between rows' },
  { keys: 'Enter', does: 'Open the row' },
]

const pictures: readonly Keys[] = [
  { keys: '+ −', does: 'Nearer, farther' },
  { keys: '← ↑ → ↓', does: 'Move the picture' },
  { keys: '0', does: 'Show all of it' },
]

/** Every key of the studio, on one sheet. */
export function KeysSheet({ onClose }: Readonly<{ onClose: () => void }>) {
  return (
    <SideSheet open title="Keys" onClose={onClose}>
      <KeyList title="Everywhere" keys={everywhere} />
      <KeyList
        title="Rooms"
        keys={rooms.map(({ title }, index) => ({
          keys: `Ctrl ${(index + 1) % 10}`,
          does: title,
        }))}
      />
      <KeyList title="In tables" keys={tables} />
      <KeyList title="In bead pictures" keys={pictures} />
      <p className="field-hint">
        On a Mac use Cmd where Ctrl is written. Alt with a digit opens a room too.
      </p>
    </SideSheet>
  )
}
