/** A bead of a part, by its number: row by row from the top, left to right, 0-based; in a strand from the panel outwards. */
export type BeadNumber = number

/** The way a thread runs through a bead, seen from the front with the chart's first row on top. */
export type Direction = 'up' | 'down' | 'left' | 'right'

/** The short thread between two neighbouring beads on the edge of the work. */
export type Bridge = Readonly<{ a: BeadNumber; b: BeadNumber }>

/**
 * One thing the needle does. The list of them, in order, is the thread's whole journey through a part.
 *
 * `pick-up` strings beads, each a first pass in its own direction. `hook` goes under the bridge that
 * lies on the `edge` side of its two beads. `tail` moves the needle to the start tail, which leaves
 * `bead` on its `edge` side. `warp` hangs one warp of a loom, of which `inPieceMm` stays in the work.
 * `join` passes a bead of another part. `add-thread` begins a new length,
 * `cut` ends one and says how much of it is cut off as too short to use.
 */
export type RouteEvent =
  | Readonly<{
      kind: 'pick-up'
      beads: readonly BeadNumber[]
      directions: readonly Direction[]
    }>
  | Readonly<{ kind: 'pass'; bead: BeadNumber; direction: Direction; purpose: PassPurpose }>
  | Readonly<{ kind: 'hook'; bridge: Bridge; edge: Direction }>
  | Readonly<{ kind: 'turn'; around: 'bead' | 'edge' | 'warp'; bead: BeadNumber }>
  | Readonly<{
      kind: 'join'
      partId: string
      bead: BeadNumber
      direction: Direction
      purpose: PassPurpose
    }>
  | Readonly<{ kind: 'warp'; lengthMm: number; inPieceMm: number }>
  | Readonly<{ kind: 'tail'; bead: BeadNumber; edge: Direction }>
  | Readonly<{ kind: 'row'; row: number; side: 'left' | 'right' }>
  | Readonly<{ kind: 'finding'; findingId: string }>
  | Readonly<{ kind: 'knot'; near: BeadNumber }>
  | Readonly<{ kind: 'add-thread'; lengthMm: number }>
  | Readonly<{ kind: 'cut'; tailMm: number }>

/** Why a bead is passed: to add it, to seat a row's first two, to step up, to travel, to stiffen, or to finish a tail. */
export type PassPurpose = 'stitch' | 'lock' | 'step-up' | 'weave' | 'reinforce' | 'finish'

/** Something the maker must know, pointing at the beads it concerns. `code` is kebab-case and stable. */
export type RouteWarning = Readonly<{
  code: string
  severity: 'note' | 'warning' | 'impossible'
  message: string
  next: string
  beads: readonly BeadNumber[]
}>

/** One step for the bench: what to do in plain words, for which row, and the events it covers (from, to). */
export type BenchStep = Readonly<{
  row: number
  text: string
  fromEvent: number
  toEvent: number
}>
