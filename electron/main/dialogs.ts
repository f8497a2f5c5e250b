import { existsSync, readFileSync, writeFileSync } from 'node:fs'

import {
  type BrowserWindow,
  dialog,
  type MessageBoxOptions,
  type OpenDialogOptions,
  type SaveDialogOptions,
} from 'electron'

// Every dialog of the shell passes here. When TALLYSTRAND_TEST_FILES names a JSON file, the first
// answer in its list is taken out and used instead of asking: a path, null for a closed dialog, or
// the number of a button. Native dialogs cannot be driven from outside, and with this the tests go
// through everything else that a maker's click goes through.

type ReadyAnswer = string | number | null

/** Asks for one file to read; undefined when the dialog was closed. */
export async function askForFile(
  window: BrowserWindow,
  options: OpenDialogOptions,
): Promise<string | undefined> {
  const ready = takeReadyAnswer()
  if (ready !== undefined) return typeof ready === 'string' ? ready : undefined
  const { filePaths } = await dialog.showOpenDialog(window, options)
  return filePaths[0]
}

/** Asks where to write a file; undefined when the dialog was closed. */
export async function askForPlace(
  window: BrowserWindow,
  options: SaveDialogOptions,
): Promise<string | undefined> {
  const ready = takeReadyAnswer()
  if (ready !== undefined) return typeof ready === 'string' ? ready : undefined
  const { canceled, filePath } = await dialog.showSaveDialog(window, options)
  return canceled || filePath === '' ? undefined : filePath
}

/** Asks a question with buttons and gives the number of the one pressed. */
export async function askWithButtons(
  window: BrowserWindow,
  options: MessageBoxOptions,
): Promise<number> {
  const ready = takeReadyAnswer()
  if (ready !== undefined) return typeof ready === 'number' ? ready : (options.cancelId ?? 0)
  return (await dialog.showMessageBox(window, options)).response
}

function takeReadyAnswer(): ReadyAnswer | undefined {
  const file = process.env['TALLYSTRAND_TEST_FILES']
  if (file === undefined || !existsSync(file)) return undefined
  const [first, ...rest] = JSON.parse(readFileSync(file, 'utf8')) as readonly ReadyAnswer[]
  writeFileSync(file, JSON.stringify(rest))
  return first ?? null
}
