import type { Basis } from '../units/spread.ts'

/** Something about a hole at a step: this pass fills it, or it is one more than it holds. */
export type HoleNote = Readonly<{
  step: number
  bead: number
  kind: 'fills' | 'sticks'
  /** Passes the hole holds. */
  holds: number
  /** The part the bead is of: a strand also passes beads of its panel. */
  partId: string
}>

/** A bridge gone under: its place from the edge the row is worked from, 1-based, and the drawn beads it lies between. */
export type BridgeAt = Readonly<{ place: number; a: number; b: number }>

/**
 * One step: a bead or a pair, a way woven, an end finished.
 *
 * `beads` are picked up here, in working order, by their numbers in the chart as it is drawn, also
 * where the copy is a mirrored one; `slots` are their slots' indexes. `text` says all with slot
 * letters; `way` only how the needle goes, with the beads' names.
 */
export type ReaderStep = Readonly<{
  text: string
  way: string
  beads: readonly number[]
  slots: readonly number[]
  bridges: readonly BridgeAt[]
  hasLock: boolean
}>

/** What a line is for: a row, a strand, warps to hang, a new length of thread, ends to weave in. */
export type ReaderLineKind = 'row' | 'strand' | 'warp' | 'thread' | 'ends'

/** What is shown at once: a row as it is worked, or what comes between rows. */
export type ReaderLine = Readonly<{
  kind: ReaderLineKind
  /** Rows as the maker counts them: one, or two that are strung together. */
  rows: readonly number[]
  /** The side it is worked from, as the copy in hand is seen from the front. */
  side: 'left' | 'right' | undefined
  /** The rest of a row whose thread was changed in its middle. */
  isContinued: boolean
  /** Its first step, counted in its stretch. */
  firstStep: number
  steps: readonly ReaderStep[]
  /** The length to cut, mm, where a new one begins. */
  threadMm: number | undefined
  /** Whether that length is doubled on the needle. */
  isDoubled: boolean
  /** Warps to hang and the length of each, mm. */
  warps: Readonly<{ count: number; lengthMm: number }> | undefined
  turns: Readonly<{ roundEdge: boolean; roundBead: boolean }>
  hasStepUp: boolean
  hasReinforce: boolean
  holes: readonly HoleNote[]
  /** Working time by the pace, s. */
  estimateS: number
}>

/** One part of a piece: its panel, or one copy of a strand. */
export type ReaderStretch = Readonly<{
  partId: string
  name: string
  kind: 'panel' | 'strand'
  /** Which of the copies on this piece, 0-based. */
  copy: number
  copies: number
  /** Where a strand hangs: `row 5, bead 1 of the panel`, as the copy in hand is seen. */
  place: string | undefined
  steps: number
  lines: readonly ReaderLine[]
}>

/** What is held in the hand: one copy of a panel with all that hangs from it, or a strand on its own. */
export type ReaderPiece = Readonly<{
  partId: string
  name: string
  copy: number
  copies: number
  isMirrored: boolean
  stretches: readonly ReaderStretch[]
}>

/** All the pieces of one unit, in the order they are made, and how well the pace of their work is known. */
export type ReaderScript = Readonly<{ pieces: readonly ReaderPiece[]; paceBasis: Basis }>

/** A run of beads of one slot. */
export type SlotRun = Readonly<{ slot: number; count: number }>

/** Beads as runs of one slot, in order: 3 of slot 0, 1 of slot 2. */
export function slotRuns(slots: readonly number[]): readonly SlotRun[] {
  const runs: { slot: number; count: number }[] = []
  for (const slot of slots) {
    const last = runs.at(-1)
    if (last?.slot === slot) last.count += 1
    else runs.push({ slot, count: 1 })
  }
  return runs
}
