import type { BeadFinish } from '../beads/bead-form.ts'
import type { ChartJson } from '../chart/chart-json.ts'

/** A slot of the design's palette: which bead form it takes and how it looks until a bead is chosen. */
export type PaletteSlot = Readonly<{
  /** A, B, C ... in order of the palette. */
  label: string
  name: string
  formId: string
  colourHex: string
  finish: BeadFinish
}>

/** How a panel is worked; what is absent is chosen by the core (fewest joins and weaves, then least thread). */
export type RouteSettings = Readonly<{
  /** Row to start from, counted from the top, 0-based. */
  startRow?: number
  /** Side the start row is begun at, seen from the front. */
  startSide?: 'left' | 'right'
  /** Two beads side by side or a ladder as the start row. */
  start?: 'ladder' | 'two-bead'
  /** Lock pass at every row's start, not only where the row shrinks. */
  lockEveryRow?: boolean
  /** Square stitch, ladder: the optional second pass through each row. */
  reinforce?: boolean
  /** Times the thread goes round a loop or finding. */
  loopPasses?: number
  startTailMm?: number
  endTailMm?: number
  /** Longest thread the maker likes to work with. */
  workingLengthMm?: number
}>

/** A stitched chart. `copies` of it go into one unit; a mirrored panel is mirrored on every second copy. */
export type Panel = Readonly<{
  kind: 'panel'
  id: string
  name: string
  chart: ChartJson
  formId: string
  copies: number
  mirrored: boolean
  route: RouteSettings
}>

/** Where a strand hangs: a panel and the row's bead it leaves from, counted from the left, 0-based. */
export type StrandAnchor = Readonly<{ panelId: string; row: number; bead: number }>

/**
 * Beads on a thread.
 *
 * `fringe` goes down through its beads, round the last (the turn bead) and back up; `loop` goes out
 * through its beads (and the finding at its middle, if any) and back into the panel.
 */
export type Strand = Readonly<{
  kind: 'strand'
  id: string
  name: string
  shape: 'fringe' | 'loop'
  /** Slot labels from the panel outwards, as runs: `12A 1B 3A`. */
  beads: string
  /** Index in `extras` of the finding the loop carries, if any. */
  findingId?: string
  /** Absent for a strand that hangs from nothing in this design. */
  anchor?: StrandAnchor
  /** Copies on each copy of its panel (or in one unit when it hangs from nothing). */
  copies: number
}>

/** A part of a design: a stitched panel or beads on a thread. */
export type Part = Panel | Strand

/** A finding or packaging item used by one unit. */
export type Extra = Readonly<{
  id: string
  kind: 'finding' | 'packaging'
  name: string
  count: number
}>

/** What one version of a design is made of. A unit is what is sold as one piece: usually a pair. */
export type DesignBody = Readonly<{
  unitName: string
  palette: readonly PaletteSlot[]
  parts: readonly Part[]
  extras: readonly Extra[]
  threadId: string
  /** Strands of thread in every pass: 1 unless told, 2 for a thread worked doubled. */
  threadStrands?: 1 | 2
  needleSize: string
  /** Seconds of work on one unit beside stitching, where the maker knows better than the reference pace. */
  setUpS?: number
  finishingS?: number
}>
