import { assert } from '../assert.ts'
import type { Basis } from '../units/spread.ts'
import type { ReaderLine, ReaderPiece, ReaderScript, ReaderStretch } from './reader-script.ts'

/**
 * Where the maker is in a make, each number 0-based: `copy` counts pieces over all units (a pair is
 * two), `part` is the panel or strand of that piece, `step` the step to be done next in it. The end
 * is the first step of the copy after the last.
 */
export type ReaderPlace = Readonly<{ copy: number; part: number; step: number }>

/** A line with where it stands: steps are counted through one unit. */
export type PlacedLine = Readonly<{
  piece: ReaderPiece
  stretch: ReaderStretch
  line: ReaderLine
  /** Its first step in the unit. */
  from: number
  /** The step after its last. */
  to: number
  /** Rows of its stretch that are worked with this line, itself too; 0 for what is no row. */
  rowAt: number
  /** All rows of its stretch. */
  rows: number
}>

type Start = Readonly<{ piece: number; part: number; from: number }>

/**
 * A whole make laid out as one line of steps, numbered through all units from 0; `steps` is the end.
 * Going on and back are then plain arithmetic.
 */
export type ReaderMap = Readonly<{
  units: number
  piecesInUnit: number
  stepsInUnit: number
  steps: number
  lines: readonly PlacedLine[]
  /** How well the pace of the lines is known. */
  paceBasis: Basis
  starts: readonly Start[]
}>

/** Lays out a make of some units, 1 or more. */
export function readerMap({ pieces, paceBasis }: ReaderScript, units: number): ReaderMap {
  assert(Number.isInteger(units) && units > 0, `a whole number of units above 0, got ${units}`)
  const lines: PlacedLine[] = []
  const starts: Start[] = []
  let from = 0
  pieces.forEach((piece, pieceAt) => {
    piece.stretches.forEach((stretch, part) => {
      starts.push({ piece: pieceAt, part, from })
      let rowAt = 0
      const rows = new Set(stretch.lines.flatMap((line) => line.rows)).size
      for (const line of stretch.lines) {
        if (!line.isContinued) rowAt += line.rows.length
        const first = from + line.firstStep
        const to = first + line.steps.length
        lines.push({
          piece,
          stretch,
          line,
          from: first,
          to,
          rowAt: line.kind === 'row' ? rowAt : 0,
          rows,
        })
      }
      from += stretch.steps
    })
  })
  return {
    units,
    piecesInUnit: pieces.length,
    stepsInUnit: from,
    steps: from * units,
    lines,
    paceBasis,
    starts,
  }
}

/** The step number of a place; a place that the design no longer has is taken to the nearest before it. */
export function stepOf(map: ReaderMap, { copy, part, step }: ReaderPlace): number {
  if (map.piecesInUnit === 0 || copy < 0) return 0
  const unit = Math.floor(copy / map.piecesInUnit)
  if (unit >= map.units) return map.steps
  const piece = copy % map.piecesInUnit
  const at = map.starts.findLastIndex(
    (start) => start.piece < piece || (start.piece === piece && start.part <= part),
  )
  const start = map.starts[at]
  if (start === undefined) return unit * map.stepsInUnit
  const end = map.starts[at + 1]?.from ?? map.stepsInUnit
  const isThere = start.piece === piece && start.part === part
  const within = isThere ? Math.max(0, step) : end - start.from - 1
  return unit * map.stepsInUnit + Math.max(start.from, Math.min(end - 1, start.from + within))
}

/** The place of a step number; the end's is the first step of the copy after the last. */
export function placeOf(map: ReaderMap, at: number): ReaderPlace {
  if (at >= map.steps) return { copy: map.units * map.piecesInUnit, part: 0, step: 0 }
  const unit = Math.floor(at / map.stepsInUnit)
  const inUnit = at - unit * map.stepsInUnit
  // Parts without steps begin where the next begins: the last of them is the one that has the step.
  const start = map.starts.findLast(({ from }) => from <= inUnit) ?? { piece: 0, part: 0, from: 0 }
  const copy = unit * map.piecesInUnit + start.piece
  return { copy, part: start.part, step: inUnit - start.from }
}

/** The line of a step number, by halving; the last line at the end. `undefined` where nothing is to be made. */
export function lineOf(map: ReaderMap, at: number): PlacedLine | undefined {
  return map.lines[lineIndex(map, at)]
}

/** The next line in the order of work, over pieces and units; `undefined` after the last. */
export function lineAfter(map: ReaderMap, at: number): PlacedLine | undefined {
  const next = goOn(map, at, 'row')
  return next >= map.steps ? undefined : lineOf(map, next)
}

function lineIndex({ lines, steps, stepsInUnit }: ReaderMap, at: number): number {
  if (at >= steps) return lines.length - 1
  const inUnit = at % stepsInUnit
  let [low, high] = [0, lines.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if ((lines[middle]?.to ?? 0) <= inUnit) low = middle + 1
    else high = middle
  }
  return low
}

/** How far one move goes. */
export type ReaderStride = 'row' | 'step'

/** One on: the next step, or the first step of the next line. Stays at the end. */
export function goOn(map: ReaderMap, at: number, stride: ReaderStride): number {
  if (at >= map.steps) return map.steps
  if (stride === 'step') return at + 1
  const unitFrom = at - (at % map.stepsInUnit)
  return unitFrom + (lineOf(map, at)?.to ?? 0)
}

/** One back: the step before, or the first step of this line, and from there of the line before. Stays at the start. */
export function goBack(map: ReaderMap, at: number, stride: ReaderStride): number {
  if (at <= 0) return 0
  if (stride === 'step') return at - 1
  // Seen from the step before, the line it stands in is this line or the one before.
  const before = at - 1
  return before - (before % map.stepsInUnit) + (lineOf(map, before)?.from ?? 0)
}

/** Whole units made when the step is the next to be done. */
export function unitsDone(map: ReaderMap, at: number): number {
  return map.stepsInUnit === 0 ? 0 : Math.floor(at / map.stepsInUnit)
}
