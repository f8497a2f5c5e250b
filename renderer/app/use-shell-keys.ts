import { useEffect, useRef } from 'react'
import type { ShellCommand } from '../../shared-core/contract/shell-commands.ts'
import { bridge } from './bridge.ts'
import { isTyping } from './is-typing.ts'
import { go } from './place.ts'
import { rooms } from './rooms.ts'
import { undoTarget } from './undo-target.ts'

type ShellKeys = Readonly<{ onFind: () => void; onKeys: () => void }>

/** Keys that work in every room, and what the window's menu asks for. */
export function useShellKeys(handlers: ShellKeys): void {
  const latest = useRef(handlers)
  latest.current = handlers
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || !answerKey(event, latest.current)) return
      event.preventDefault()
    }
    const stopHearing = bridge.onCommand((command) => answerCommand(command, latest.current))
    addEventListener('keydown', onKey)
    return () => {
      stopHearing()
      removeEventListener('keydown', onKey)
    }
  }, [])
}

/** Whether the key was ours. */
function answerKey(event: KeyboardEvent, { onFind, onKeys }: ShellKeys): boolean {
  const command = event.ctrlKey || event.metaKey
  const room = roomOfKey(event)
  if (room !== undefined && (command || event.altKey)) {
    go({ room })
    return true
  }
  if (command && event.key.toLowerCase() === 'k') {
    onFind()
    return true
  }
  if (isTyping(event.target)) return false
  if (event.key === '?') {
    onKeys()
    return true
  }
  if (!command) return false
  const isRedo =
    event.key.toLowerCase() === 'y' || (event.key.toLowerCase() === 'z' && event.shiftKey)
  if (isRedo) undoTarget().redo()
  else if (event.key.toLowerCase() === 'z') undoTarget().undo()
  else return false
  return true
}

function roomOfKey({ code }: KeyboardEvent) {
  const digit = /^Digit(\d)$/.exec(code)?.[1]
  return digit === undefined ? undefined : rooms[(Number(digit) + 9) % 10]?.name
}

function answerCommand(command: ShellCommand, { onFind }: ShellKeys): void {
  if (command.kind === 'find') onFind()
  else if (command.kind === 'open-room') go({ room: command.room })
  // A text field keeps its own undo, which only the page's old command reaches.
  else if (isTyping(document.activeElement)) document.execCommand(command.kind)
  else undoTarget()[command.kind]()
}
