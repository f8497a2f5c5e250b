import { rmSync } from 'node:fs'
import { mkdtemp, readFile, rename, rm, stat, writeFile } from 'node:fs/promises'
import { basename, dirname, extname, join } from 'node:path'

import { app, type BrowserWindow, nativeTheme, shell } from 'electron'

import type { Answer } from '../../shared-core/contract/calls.ts'
import {
  isShellCallName,
  type ParsedShellInput,
  type ShellCallName,
  type ShellCallOutput,
  shellCalls,
} from '../../shared-core/contract/shell-calls.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import { err, ok } from '../../shared-core/result.ts'
import { askForFile, askForPlace } from './dialogs.ts'
import { fileFault } from './file-fault.ts'
import { keepAwake } from './keep-awake.ts'
import { log } from './log.ts'
import { dataFile } from './user-data.ts'

const largestFileBytes = 36 * 1024 * 1024
/** Endings that open in a viewer and cannot run anything. */
const openable = ['.pdf', '.png', '.csv']

type Handlers = Readonly<{
  [N in ShellCallName]: (
    input: ParsedShellInput<N>,
    window: BrowserWindow,
  ) => Promise<Answer<ShellCallOutput<N>>>
}>

const savedFiles = new Map<string, string>()

const handlers: Handlers = {
  'file.pick': pickFile,
  'file.save': saveFile,
  'file.show': async ({ savedId }) => {
    const path = savedFiles.get(savedId)
    if (path === undefined) return err(notSaved)
    shell.showItemInFolder(path)
    return ok({})
  },
  'file.open': async ({ savedId }) => {
    const path = savedFiles.get(savedId)
    if (path === undefined || !openable.includes(extname(path).toLowerCase())) return err(notSaved)
    const trouble = await shell.openPath(path)
    return trouble === '' ? ok({}) : err(noProgram(path))
  },
  'file.view': viewFile,
  'window.setTheme': async ({ theme }) => {
    nativeTheme.themeSource = theme
    return ok({})
  },
  'window.keepAwake': async ({ awake }, { webContents }) => {
    keepAwake(webContents, awake)
    return ok({})
  },
  'studio.describe': async () =>
    ok({ version: app.getVersion(), electron: process.versions.electron, dataFile: dataFile() }),
}

/** Answers one call of the shell: checks its name and input, and turns every fault into a refusal. */
export async function answerShellCall(
  name: unknown,
  rawInput: unknown,
  window: BrowserWindow,
): Promise<Answer<unknown>> {
  if (typeof name !== 'string' || !isShellCallName(name)) return err(unknownCall)
  const input = shellCalls[name].input.safeParse(rawInput)
  if (!input.success) {
    const [issue] = input.error.issues
    const field = issue?.path.join('.') ?? ''
    return err({
      code: 'bad-input',
      message: `${name}: ${field === '' ? 'the input' : field} is not as expected: ${issue?.message}.`,
      next: 'Use the studio’s own buttons; if this came from one of them, please report it.',
      field,
    })
  }
  try {
    const handler = handlers[name] as (
      input: unknown,
      window: BrowserWindow,
    ) => Promise<Answer<unknown>>
    return await handler(input.data, window)
  } catch (cause) {
    log(`shell call ${name} failed`, cause)
    return err(fileFault(cause))
  }
}

async function pickFile(
  { title, filters }: ParsedShellInput<'file.pick'>,
  window: BrowserWindow,
): Promise<Answer<ShellCallOutput<'file.pick'>>> {
  const path = await askForFile(window, { title, filters, properties: ['openFile'] })
  if (path === undefined) return ok({ kind: 'cancelled' })
  const { size } = await stat(path)
  if (size > largestFileBytes) return err(tooLarge(path, size))
  const base64 = (await readFile(path)).toString('base64')
  return ok({ kind: 'picked', file: { fileName: basename(path), base64 } })
}

async function saveFile(
  { title, file }: ParsedShellInput<'file.save'>,
  window: BrowserWindow,
): Promise<Answer<ShellCallOutput<'file.save'>>> {
  const suggested = basename(file.fileName)
  const extension = extname(suggested).slice(1)
  const path = await askForPlace(window, {
    title,
    defaultPath: join(app.getPath('documents'), suggested),
    filters: extension === '' ? [] : [{ name: extension.toUpperCase(), extensions: [extension] }],
  })
  if (path === undefined) return ok({ kind: 'cancelled' })
  await writeWhole(path, Buffer.from(file.base64, 'base64'))
  const savedId = `saved_${savedFiles.size + 1}`
  savedFiles.set(savedId, path)
  return ok({ kind: 'saved', savedId, fileName: basename(path), folder: dirname(path) })
}

/** Writes a document to a place of its own for this run and opens it there, to be looked at or printed. */
async function viewFile({
  file,
}: ParsedShellInput<'file.view'>): Promise<Answer<ShellCallOutput<'file.view'>>> {
  const name = basename(file.fileName)
  if (!openable.includes(extname(name).toLowerCase())) return err(notSaved)
  const path = join(await viewedFolder(), name)
  await writeWhole(path, Buffer.from(file.base64, 'base64'))
  const trouble = await shell.openPath(path)
  return trouble === '' ? ok({}) : err(noViewer)
}

/** A new folder for each document, so that an older one still open is not written over. */
async function viewedFolder(): Promise<string> {
  const folder = await mkdtemp(join(app.getPath('temp'), 'tallystrand-'))
  app.once('will-quit', () => {
    try {
      rmSync(folder, { recursive: true, force: true })
    } catch (cause) {
      // A viewer may hold it still; the system empties its temporary folder in time.
      log('a viewed document stayed behind', cause)
    }
  })
  return folder
}

/** A file that is there before stays as it was until the new one is whole. */
async function writeWhole(path: string, bytes: Buffer): Promise<void> {
  const draft = `${path}.part`
  try {
    await writeFile(draft, bytes)
    await rename(draft, path)
  } catch (cause) {
    await rm(draft, { force: true })
    throw cause
  }
}

const unknownCall: Refusal = {
  code: 'unknown-call',
  message: 'The shell knows no call of that name.',
  next: 'Use one of the calls in the table of shell calls.',
}

const notSaved: Refusal = {
  code: 'file-not-saved-here',
  message: 'That file was not saved since the studio opened, or is of a kind it does not open.',
  next: 'Open it from its folder.',
}

const noViewer: Refusal = {
  code: 'no-program',
  message: 'No program on this computer opens this kind of document.',
  next: 'Save it instead, and print it where there is one.',
}

function noProgram(path: string): Refusal {
  return {
    code: 'no-program',
    message: `No program on this computer opens ${basename(path)}.`,
    next: `Open it from its folder: ${dirname(path)}.`,
  }
}

function tooLarge(path: string, size: number): Refusal {
  const mebibytes = Math.ceil(size / 1024 / 1024)
  return {
    code: 'file-too-large',
    message: `${basename(path)} holds ${mebibytes} MiB.`,
    next: 'Choose a file of at most 36 MiB.',
  }
}
