import type { PlacedLine } from '../../../../shared-core/bench/reader-place.ts'
import {
  type ReaderLine,
  type ReaderPiece,
  type ReaderStep,
  slotRuns,
} from '../../../../shared-core/bench/reader-script.ts'
import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import { tellBridges } from './tell-bridges.ts'

/** What words are told with: each slot's bead by its name in stock, lengths as the workshop writes them. */
export type Telling = Readonly<{
  beadName: (slot: number) => string
  thread: (mm: number) => string
  /** The stitch of a panel; absent for a strand. */
  stitchOf: (partId: string) => StitchKind | undefined
}>

/** A line's short name: `Row 12`, `Reed 3`, `New thread`. */
export function lineName({ line, stretch }: Pick<PlacedLine, 'line' | 'stretch'>): string {
  switch (line.kind) {
    case 'row':
      return `${line.rows.length > 1 ? 'Rows' : 'Row'} ${line.rows.join(' and ')}`
    case 'strand':
      return stretch.copies > 1
        ? `${stretch.name}, ${stretch.copy + 1} of ${stretch.copies}`
        : stretch.name
    case 'warp':
      return 'Warps'
    case 'thread':
      return line.firstStep === 0 && line.steps.length === 1 ? 'Thread the needle' : 'New thread'
    case 'ends':
      return 'Ends'
  }
}

/** How a line begins: `from the left`, `goes on from the right`. */
export function lineSide({ side, isContinued }: ReaderLine): string {
  if (side === undefined) return isContinued ? 'goes on' : ''
  return isContinued ? `goes on from the ${side}` : `from the ${side}`
}

/** Beads in order, with their names: `3 oyster shell, 1 lamp amber`. */
export function tellBeads(slots: readonly number[], { beadName }: Telling): string {
  return slotRuns(slots)
    .map(({ slot, count }) => `${count} ${beadName(slot)}`)
    .join(', ')
}

/** All slots picked up in a line, in working order. */
export function lineSlots({ steps }: ReaderLine): readonly number[] {
  return steps.flatMap(({ slots }) => slots)
}

/** What to do in a line beside its beads, a sentence or two: bridges, lock pass, turns. */
export function tellWork(
  { line, stretch }: Pick<PlacedLine, 'line' | 'stretch'>,
  telling: Telling,
): string {
  switch (line.kind) {
    case 'row':
      return sentences([
        line.steps.some(({ bridges }) => bridges.length > 0)
          ? tellBridges(line.steps)
          : wayOfStitch(line, telling.stitchOf(stretch.partId)),
        line.hasStepUp && 'Step up at the end',
        line.turns.roundEdge && 'Turn round the edge thread',
        line.turns.roundBead && 'Skip the turn bead',
        line.hasReinforce && 'Then once more through the row',
      ])
    case 'strand':
      return sentences([
        stretch.place !== undefined && `It hangs from ${stretch.place}`,
        ...line.steps.filter(({ beads }) => beads.length === 0).map(({ way }) => way),
        line.turns.roundBead &&
          'Skip the last bead, the turn bead, and go back up through the rest',
        line.hasReinforce && 'Go round once more as often as you planned',
      ])
    case 'warp':
      return ''
    case 'thread':
    case 'ends':
      return sentences(line.steps.map(({ way }) => way))
  }
}

/** The large words of a line that picks up no beads. */
export function tellBare(
  { line, stretch }: Pick<PlacedLine, 'line' | 'stretch'>,
  telling: Telling,
): string {
  if (line.kind === 'warp' && line.warps !== undefined) {
    return `Hang ${line.warps.count} warps of ${telling.thread(line.warps.lengthMm)} each`
  }
  if (line.kind === 'thread' && line.threadMm !== undefined) {
    const isFirst = line.firstStep === 0 && line.steps.length === 1
    const long = `${telling.thread(line.threadMm)}${line.isDoubled ? ' and double it' : ''}`
    return `${isFirst ? 'Cut' : 'Weave in the end, then cut'} ${long}`
  }
  if (line.kind === 'ends') return 'Weave in and cut'
  return lineName({ line, stretch })
}

function wayOfStitch({ steps }: ReaderLine, stitch: StitchKind | undefined): string | false {
  const most = Math.max(0, ...steps.map(({ beads }) => beads.length))
  if (most === 0) return false
  switch (stitch) {
    case 'peyote':
      return steps.length === 1
        ? 'String them all'
        : 'One at a time, each into the next bead that stands out'
    case 'square':
      return 'One at a time, each tied to the bead below'
    case 'herringbone':
      return 'Two at a time: up one and down the next of the row below'
    case 'right-angle-weave':
      return 'Ring by ring'
    case 'loom':
      return 'Press them up between the warps, and back through all of them above'
    case 'ladder':
    case 'brick':
      return 'Side by side, each tied to the one before'
    default:
      return false
  }
}

function sentences(parts: readonly (string | false)[]): string {
  return parts
    .filter((part) => part !== false && part !== '')
    .map((part) => `${part}.`)
    .join(' ')
}

/** One step in words: its beads, and how the needle goes. */
export function tellStep({ slots, way }: ReaderStep, telling: Telling): string {
  return sentences([slots.length > 0 && tellBeads(slots, telling), way])
}

/** A whole line in words for ear and screen reader. */
export function speakLine(placed: PlacedLine, telling: Telling): string {
  const slots = lineSlots(placed.line)
  const side = lineSide(placed.line)
  const head = side === '' ? lineName(placed) : `${lineName(placed)} ${side}`
  const what = slots.length > 0 ? tellBeads(slots, telling) : tellBare(placed, telling)
  const work =
    placed.line.kind === 'thread' || placed.line.kind === 'ends' ? '' : tellWork(placed, telling)
  return `${head}. ${what}. ${work}`.trimEnd()
}

/** A piece among those of its unit: `Diamond 2 of 2, mirrored`. */
export function pieceName({ name, copy, copies, isMirrored }: ReaderPiece): string {
  const which = copies > 1 ? `${name} ${copy + 1} of ${copies}` : name
  return isMirrored ? `${which}, mirrored` : which
}
