import { refusalWords } from '../ui/refusal-words.ts'
import { showToast } from '../ui/toast-store.ts'
import { bridge } from './bridge.ts'
import { refreshAfter } from './refresh.ts'

/** Takes back the latest step that stands, and says which. */
export function undo(): Promise<void> {
  return step('history.undo', (label) =>
    showToast({
      isStep: true,
      text: `Undone: ${label}`,
      action: { label: 'Redo', run: () => void redo() },
    }),
  )
}

/** Does the latest undone step again, and says which. */
export function redo(): Promise<void> {
  return step('history.redo', (label) =>
    showToast({
      isStep: true,
      text: `Done again: ${label}`,
      action: { label: 'Undo', run: () => void undo() },
    }),
  )
}

async function step(
  name: 'history.undo' | 'history.redo',
  tell: (label: string) => void,
): Promise<void> {
  const answer = await bridge.request(name, {})
  if (!answer.ok) {
    showToast({ tone: 'refused', text: refusalWords(answer.error) })
    return
  }
  await refreshAfter(name)
  tell(answer.value.label)
}
