import type { Answer } from '../../shared-core/contract/calls.ts'
import { refusalWords } from '../ui/refusal-words.ts'
import { showToast } from '../ui/toast-store.ts'
import { bridge } from './bridge.ts'

/** A file as the contract carries it. */
export type FileBytes = Readonly<{ fileName: string; base64: string }>

/** What a file dialog offers: a plain name and the endings, without a dot. */
export type FileFilter = Readonly<{ name: string; extensions: readonly string[] }>

/** Lets the maker choose a file; `undefined` when she closes the dialog, a refusal where it cannot be read. */
export async function pickFile(
  title: string,
  filters: readonly FileFilter[],
): Promise<Answer<FileBytes | undefined>> {
  const answer = await bridge.shell('file.pick', {
    title,
    filters: filters.map(({ name, extensions }) => ({ name, extensions: [...extensions] })),
  })
  if (!answer.ok) return answer
  return { ok: true, value: answer.value.kind === 'picked' ? answer.value.file : undefined }
}

/** Lets the maker choose where a made file goes, writes it, and offers to open it. Says what went wrong itself. */
export async function saveFile(title: string, { fileName, base64 }: FileBytes): Promise<boolean> {
  const answer = await bridge.shell('file.save', { title, file: { fileName, base64 } })
  if (!answer.ok) {
    showToast({ tone: 'refused', text: refusalWords(answer.error) })
    return false
  }
  if (answer.value.kind === 'cancelled') return false
  const { savedId, fileName: name, folder } = answer.value
  showToast({
    text: `Saved ${name} in ${folder}`,
    action: { label: 'Open', run: () => void bridge.shell('file.open', { savedId }) },
  })
  return true
}

/** Opens a made document in its usual program without asking where to keep it. Says what went wrong itself. */
export async function viewFile({ fileName, base64 }: FileBytes): Promise<boolean> {
  const answer = await bridge.shell('file.view', { file: { fileName, base64 } })
  if (answer.ok) return true
  showToast({ tone: 'refused', text: refusalWords(answer.error) })
  return false
}
