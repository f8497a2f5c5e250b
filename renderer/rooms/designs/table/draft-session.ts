import type { CellRef } from '../../../../shared-core/chart/chart.ts'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { sharedChart } from '../../../../shared-core/chart/shared-rows.ts'
import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import {
  applyEdits,
  type BodyEdit,
  type Stroke,
} from '../../../../shared-core/design/edits/body-edit.ts'
import { bodyStroke } from '../../../../shared-core/design/edits/body-stroke.ts'
import { chartStroke } from '../../../../shared-core/design/edits/chart-stroke.ts'
import { joinStrokes } from '../../../../shared-core/design/edits/join-strokes.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { type StrokePort, StrokeWriter } from './stroke-writer.ts'

/** What lies on the table now, as a screen shows it. */
export type DraftView = Readonly<{
  body: DesignBody
  /** How far the cells of each panel's chart have come since it was put on the table: a chart grows to the left too. */
  moved: ReadonlyMap<string, CellRef>
  /** The design's latest version. */
  version: number
  position: number
  undoLabel: string | undefined
  redoLabel: string | undefined
  /** Whether the latest version is the same as what lies here. */
  isSaved: boolean
  isBehind: boolean
  /** Why the last strokes could not be kept. */
  refusal: Refusal | undefined
}>

type Opened = CallOutput<'drafts.open'>

/** Strokes kept at hand; older ones are read from the store when undo comes to them. */
const MOST_AT_HAND = 2_000
const READ_AT_ONCE = 500

/** A drawing under way: every change is a stroke, done here at once and written behind. */
export class DraftSession {
  readonly designId: string
  readonly #port: StrokePort
  readonly #writer: StrokeWriter
  readonly #listeners = new Set<() => void>()
  #body: DesignBody
  #moved: ReadonlyMap<string, CellRef> = new Map()
  #position: number
  #count: number
  /** Strokes at hand, the first of them number `#first`. */
  #strokes: Stroke[]
  #first: number
  #savedAt: number | undefined
  #reading: Promise<void> | undefined
  #version: number
  #isBehind: boolean
  #refusal: Refusal | undefined
  #view: DraftView

  constructor(opened: Opened, port: StrokePort) {
    this.designId = opened.designId
    this.#port = port
    this.#writer = new StrokeWriter(opened.designId, port, (refusal) => {
      this.#refusal = refusal
      this.#tell()
    })
    this.#body = opened.body
    this.#position = opened.position
    this.#count = opened.count
    this.#first = opened.strokes[0]?.seq ?? opened.position + 1
    this.#strokes = opened.strokes.map(({ seq: _, ...stroke }) => stroke)
    this.#savedAt = opened.savedPosition ?? undefined
    this.#version = opened.version
    this.#isBehind = opened.isBehind
    this.#view = this.#look()
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  readonly view = (): DraftView => this.#view

  /**
   * Draws: an edit of a panel's chart as it stands now. An edit that changes nothing is no stroke.
   *
   * @param palette - The slots the edit is drawn in, where it brings new ones: they come and go with it.
   */
  stroke(label: string, partId: string, edit: ChartEdit, palette = this.#body.palette): void {
    const body = this.#body
    const panel = body.parts.find(({ id }) => id === partId)
    if (panel?.kind !== 'panel' || edit.inverse.splices.length === 0) return
    const before = sharedChart(panel.chart)
    if (palette === body.palette) {
      this.#do(chartStroke(label, body, { partId, before, edit }))
      return
    }
    const withSlots = { ...body, palette }
    const drawn = chartStroke(label, withSlots, { partId, before, edit })
    this.#do(joinStrokes(label, bodyStroke(label, body, withSlots), drawn))
  }

  /** Changes anything else: parts, palette, findings, how it is worked. */
  change(label: string, next: DesignBody): void {
    if (next !== this.#body) this.#do(bodyStroke(label, this.#body, next))
  }

  async undo(): Promise<void> {
    if (this.#position === 0) return
    await this.#reach(this.#position)
    const stroke = this.#strokeAt(this.#position)
    if (stroke !== undefined) this.#move(stroke.undo, this.#position - 1)
  }

  async redo(): Promise<void> {
    if (this.#position === this.#count) return
    await this.#reach(this.#position + 1)
    const stroke = this.#strokeAt(this.#position + 1)
    if (stroke !== undefined) this.#move(stroke.redo, this.#position + 1)
  }

  /** To be told when what lies here was saved as a version. */
  saved(version: number): void {
    this.#version = version
    this.#savedAt = this.#position
    this.#isBehind = false
    this.#tell()
  }

  tryAgain(): void {
    this.#writer.tryAgain()
  }

  settled(): Promise<void> {
    return this.#writer.settled()
  }

  /** Hands what is not written yet to the store; to be called when the window or the screen goes. */
  hurry(): void {
    this.#writer.hurry()
  }

  #do(stroke: Stroke): void {
    const after = applyEdits(this.#body, stroke.redo)
    if (!after.ok) throw new Error(`${stroke.label}: ${after.error.message}`)
    this.#body = after.value
    this.#moved = movedBy(this.#moved, stroke.redo)
    if (this.#savedAt !== undefined && this.#savedAt > this.#position) this.#savedAt = undefined
    this.#strokes.splice(this.#position + 1 - this.#first)
    this.#strokes.push(stroke)
    const spare = this.#strokes.length - MOST_AT_HAND
    if (spare >= READ_AT_ONCE) {
      this.#strokes.splice(0, spare)
      this.#first += spare
    }
    this.#writer.stroke(this.#position, stroke)
    this.#position += 1
    this.#count = this.#position
    this.#tell()
  }

  #move(edits: readonly BodyEdit[], position: number): void {
    const after = applyEdits(this.#body, edits)
    if (!after.ok) {
      this.#refusal = after.error
    } else {
      this.#body = after.value
      this.#moved = movedBy(this.#moved, edits)
      this.#position = position
      this.#writer.moveTo(position)
    }
    this.#tell()
  }

  #strokeAt(seq: number): Stroke | undefined {
    return this.#strokes[seq - this.#first]
  }

  /** Has stroke number `seq` at hand, where the store has it; keys pressed while it is read wait for one reading. */
  async #reach(seq: number): Promise<void> {
    if (this.#strokeAt(seq) !== undefined) return
    this.#reading ??= this.#read(seq)
    await this.#reading
    this.#reading = undefined
  }

  async #read(seq: number): Promise<void> {
    await this.#writer.settled()
    const isOlder = seq < this.#first
    const from = isOlder ? Math.max(1, seq - READ_AT_ONCE + 1) : seq
    const to = isOlder ? this.#first - 1 : Math.min(this.#count, seq + READ_AT_ONCE - 1)
    const answer = await this.#port.strokes({ designId: this.designId, from, to })
    if (!answer.ok) return
    const read = answer.value.strokes.map(({ seq: _, ...stroke }) => stroke)
    if (isOlder) {
      // What is let go at the other end is read again when redo comes to it.
      this.#strokes = [...read, ...this.#strokes].slice(0, MOST_AT_HAND)
      this.#first = from
    } else if (seq === this.#first + this.#strokes.length) {
      const all = [...this.#strokes, ...read]
      const spare = Math.max(0, all.length - MOST_AT_HAND)
      this.#strokes = all.slice(spare)
      this.#first += spare
    }
  }

  #tell(): void {
    this.#view = this.#look()
    for (const listener of this.#listeners) listener()
  }

  #look(): DraftView {
    const canUndo = this.#position > 0
    const canRedo = this.#position < this.#count
    return {
      body: this.#body,
      moved: this.#moved,
      version: this.#version,
      position: this.#position,
      undoLabel: canUndo ? (this.#strokeAt(this.#position)?.label ?? 'Older strokes') : undefined,
      redoLabel: canRedo
        ? (this.#strokeAt(this.#position + 1)?.label ?? 'Later strokes')
        : undefined,
      isSaved: this.#savedAt === this.#position,
      isBehind: this.#isBehind,
      refusal: this.#refusal,
    }
  }
}

function movedBy(
  moved: ReadonlyMap<string, CellRef>,
  edits: readonly BodyEdit[],
): ReadonlyMap<string, CellRef> {
  const after = new Map(moved)
  for (const edit of edits) {
    if (edit.kind !== 'chart') continue
    const { row, at } = edit.patch.shift
    const before = after.get(edit.partId) ?? { row: 0, at: 0 }
    after.set(edit.partId, { row: before.row + row, at: before.at + at })
  }
  return after
}
