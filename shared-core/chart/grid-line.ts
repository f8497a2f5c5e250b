import { MAX_SLOTS, slotIndex } from './chart.ts'
import { MAX_COLUMNS } from './chart-limits.ts'

/** A line of a grid file as read: its offset in half beads where one stands before a semicolon, and its cells. */
export type GridLine = Readonly<{
  offset: number | undefined
  cells: Uint16Array
  hasSmallLetters: boolean
  faults: readonly GridFault[]
}>

/** What a line holds that is not accepted, and what is. */
export type GridFault = Readonly<{ code: string; found: string; next: string }>

/** Faults named in one line; the rest of a broken line tells nothing new. */
const FAULTS_A_LINE = 5

/**
 * Reads one line of a grid file.
 *
 * A whole number before the first semicolon is the offset. Cells follow, set apart by commas, tabs or
 * semicolons (the first of these the line holds); nothing, `-` or `.` is a place without a bead.
 */
export function readGridLine(line: string): GridLine {
  const semicolon = line.indexOf(';')
  const head = semicolon < 0 ? '' : line.slice(0, semicolon).trim()
  // A decimal comma is caught here too, so that it is named as an offset and not as two cells.
  if (!/^[-+]?\d[\d.,]*$/.test(head)) return { ...readCells(line), offset: undefined }
  const cells = readCells(line.slice(semicolon + 1))
  const isWhole = /^\+?\d{1,6}$/.test(head) && Number(head) <= 2 * MAX_COLUMNS
  if (isWhole) return { ...cells, offset: Number(head) }
  return { ...cells, offset: 0, faults: [offsetFault(head), ...cells.faults] }
}

type Cells = Omit<GridLine, 'offset'>

function readCells(text: string): Cells {
  if (text.trim() === '') return { cells: new Uint16Array(0), hasSmallLetters: false, faults: [] }
  const tokens = text.split(separatorOf(text))
  const cells = new Uint16Array(tokens.length)
  const faults: GridFault[] = []
  let hasSmallLetters = false
  tokens.forEach((token, i) => {
    const cell = readToken(token)
    if (cell >= 0) {
      cells[i] = cell
      hasSmallLetters ||= /[a-z]/.test(token)
    } else if (faults.length < FAULTS_A_LINE) {
      faults.push(tokenFault(token.trim(), i + 1))
    }
  })
  return { cells, hasSmallLetters, faults }
}

function separatorOf(text: string): string {
  return [',', '\t', ';'].find((separator) => text.includes(separator)) ?? ','
}

function readToken(token: string): number {
  // Most tokens are one capital; this keeps files of millions of cells quick.
  if (token.length === 1) {
    const code = token.charCodeAt(0)
    if (code >= 65 && code <= 90) return code - 64
  }
  const plain = token.trim().replace(/^"(.*)"$/, '$1')
  if (plain === '' || plain === '-' || plain === '.') return 0
  return (slotIndex(plain.toUpperCase()) ?? -2) + 1
}

function tokenFault(token: string, place: number): GridFault {
  const found = `${quoted(token)} in place ${place}`
  return /^[A-Za-z]+$/.test(token)
    ? {
        code: 'grid-too-many-slots',
        found,
        next: `A palette holds at most ${MAX_SLOTS} slots; use A to Z, then AA, AB and so on.`,
      }
    : {
        code: 'grid-slot-unknown',
        found,
        next: 'A cell is a slot letter (A, B ... Z, AA ...), or empty, - or . for no bead.',
      }
}

function offsetFault(head: string): GridFault {
  return {
    code: 'grid-offset-not-whole',
    found: `the offset ${quoted(head)}`,
    next: `An offset is a whole number of half beads from the left, 0 to ${2 * MAX_COLUMNS}.`,
  }
}

function quoted(token: string): string {
  return `“${token.length > 20 ? `${token.slice(0, 20)}…` : token}”`
}
