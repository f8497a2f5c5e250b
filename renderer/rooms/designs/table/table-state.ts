import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import type { Stroke } from '../../../../shared-core/chart/edits/draw-line.ts'
import type { DesignBody, Panel } from '../../../../shared-core/design/design.ts'
import type { DraftView } from './draft-session.ts'
import type { LiveStroke } from './live-stroke.ts'
import type { Placed } from './selection-edits.ts'
import type { ClipBoard } from './table-clip.ts'
import type { MirrorWay, ToolName } from './tools.ts'

/** What the table draws on: the draft, seen as it is now. */
export type TableHost = Readonly<{
  view: () => DraftView
  /** An edit of a panel's chart; with a palette where it brings new slots. */
  stroke: (label: string, partId: string, edit: ChartEdit, palette?: DesignBody['palette']) => void
  clipBoard: ClipBoard
}>

/** The drawing table as it is shown. Cells are the table's own: see `Lattice`. */
export type TableView = Readonly<{
  panel: Panel | undefined
  /** With the stroke that is being drawn. */
  chart: Chart
  /** How far the chart's cells lie from the table's. */
  moved: CellRef
  isDrawing: boolean
  tool: ToolName
  slot: number
  mirror: MirrorWay
  cell: CellRef
  selection: Stroke | undefined
  hasClip: boolean
  /** What has just been done or is to be known, said to those who do not see it. */
  told: string
}>

/** What the table keeps between strokes. */
export type TableState = Readonly<{
  partId: string | undefined
  tool: ToolName
  slot: number
  mirror: MirrorWay
  cell: CellRef
  /** Where the crosshair would lie in a row that has such a place: it does not drift on its way down. */
  wantedAt: number
  selection: Stroke | undefined
  told: string
}>

/** What the pointer or the keys are in the middle of. */
export type TableBusy =
  | Readonly<{
      kind: 'draw'
      live: LiveStroke
      /** The chart it was begun on, as it lies in the draft. */
      on: Panel['chart'] | undefined
      /** Whether every cell it passes is drawn, or what lies between its two ends. */
      isTrail: boolean
      base: CellRef
      label: string
      byKey: boolean
    }>
  | Readonly<{ kind: 'select'; from: CellRef; byKey: boolean }>
  | Readonly<{
      kind: 'move'
      from: CellRef
      selection: Stroke
      on: Panel['chart'] | undefined
      placed: Placed | undefined
    }>
