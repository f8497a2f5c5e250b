import { closeSync, existsSync, openSync, readSync, statSync } from 'node:fs'
import { basename, dirname } from 'node:path'
import type { Refusal } from '../../../shared-core/refusal.ts'

/** Written into the header of every file of ours: "Tlly". */
export const APPLICATION_ID = 0x546c6c79

const HEADER_BYTES = 100
const SIGNATURE = 'SQLite format 3\0'
// Offsets in the file header. Source: sqlite.org, Database File Format, section 1.3.
const USER_VERSION_AT = 60
const APPLICATION_ID_AT = 68

/** What stands at the place a workshop is to be opened from, found without opening it as a database. */
export type FileCheck =
  | Readonly<{ kind: 'new' }>
  | Readonly<{ kind: 'ours'; version: number }>
  | Readonly<{ kind: 'refused'; refusal: Refusal }>

/**
 * Says whether a file is ours to open, reading its first bytes only, so that a stranger's file stays
 * as it is.
 *
 * A file of no bytes is new. The version in the header can be older than the one in the write-ahead
 * log beside it; the driver looks again once the file is open.
 */
export function checkFile(file: string, latestVersion: number): FileCheck {
  if (!existsSync(dirname(file))) return { kind: 'refused', refusal: noFolder(file) }
  if (!existsSync(file)) return { kind: 'new' }
  if (!statSync(file).isFile()) return { kind: 'refused', refusal: notAFile(file) }
  const header = readHeader(file)
  if (header.length === 0) return { kind: 'new' }
  if (header.length < HEADER_BYTES || header.toString('latin1', 0, 16) !== SIGNATURE) {
    return { kind: 'refused', refusal: notADatabase(file) }
  }
  const foreign = header.readUInt32BE(APPLICATION_ID_AT) !== APPLICATION_ID
  if (foreign) return { kind: 'refused', refusal: notOurs(file) }
  const version = header.readUInt32BE(USER_VERSION_AT)
  if (version > latestVersion) return { kind: 'refused', refusal: newerVersion(file) }
  return { kind: 'ours', version }
}

function readHeader(file: string): Buffer {
  const handle = openSync(file, 'r')
  try {
    const header = Buffer.alloc(HEADER_BYTES)
    return header.subarray(0, readSync(handle, header, 0, HEADER_BYTES, 0))
  } finally {
    closeSync(handle)
  }
}

const UNTOUCHED = 'The file was left exactly as it is.'

function noFolder(file: string): Refusal {
  return {
    code: 'file-not-reached',
    message: `The folder ${dirname(file)} is not there.`,
    next: 'Check that the folder exists and its drive is connected, then try again.',
  }
}

function notAFile(file: string): Refusal {
  return {
    code: 'not-a-file',
    message: `${basename(file)} is not a file. ${UNTOUCHED}`,
    next: 'Choose the workshop file itself, or another place for a new one.',
  }
}

function notADatabase(file: string): Refusal {
  return {
    code: 'not-a-workshop-file',
    message: `${basename(file)} is not a workshop file. ${UNTOUCHED}`,
    next: 'Choose a workshop file, or move this one away to begin a new workshop here.',
  }
}

function notOurs(file: string): Refusal {
  return {
    code: 'another-programs-file',
    message: `${basename(file)} belongs to another program. ${UNTOUCHED}`,
    next: 'Choose a workshop file, or another place for a new one.',
  }
}

/** The refusal of a file from the future. */
export function newerVersion(file: string): Refusal {
  return {
    code: 'newer-version',
    message: `${basename(file)} was saved by a newer version of the studio. ${UNTOUCHED}`,
    next: 'Update the studio, then open the file again.',
  }
}
