import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs'
import { join } from 'node:path'

import { app } from 'electron'

const turnOverAtBytes = 1_000_000

/** Adds a line to `logs/studio.log` in the user's folder; the one before it is kept when it grows. */
export function log(message: string, detail?: unknown): void {
  const folder = join(app.getPath('userData'), 'logs')
  const file = join(folder, 'studio.log')
  try {
    mkdirSync(folder, { recursive: true })
    turnOver(file)
    appendFileSync(file, `${new Date().toISOString()} ${message}${inWords(detail)}\n`)
  } catch {
    // A full disk must not stop the studio; the line is lost, the work is not.
  }
}

function turnOver(file: string): void {
  const size = statSync(file, { throwIfNoEntry: false })?.size ?? 0
  if (size > turnOverAtBytes) renameSync(file, `${file}.1`)
}

function inWords(detail: unknown): string {
  if (detail === undefined) return ''
  if (detail instanceof Error) return ` ${detail.stack ?? detail.message}`
  return ` ${JSON.stringify(detail)}`
}
