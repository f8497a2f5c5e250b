import type { Answer, CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Stroke } from '../../../../shared-core/design/edits/body-edit.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'

/** How strokes reach the store. */
export type StrokePort = Readonly<{
  stroke: (input: CallInput<'drafts.stroke'>) => Promise<Answer<CallOutput<'drafts.stroke'>>>
  moveTo: (input: CallInput<'drafts.moveTo'>) => Promise<Answer<CallOutput<'drafts.moveTo'>>>
  strokes: (input: CallInput<'drafts.strokes'>) => Promise<Answer<CallOutput<'drafts.strokes'>>>
}>

type Step =
  | Readonly<{ kind: 'stroke'; position: number; strokes: Stroke[] }>
  | Readonly<{ kind: 'move'; position: number }>

/** Strokes sent at once. */
const MOST_AT_ONCE = 500

/**
 * Writes strokes to the store in the order they were drawn, several at once when the store is slower
 * than the hand. What was refused stays in line, to be tried again.
 */
export class StrokeWriter {
  readonly #designId: string
  readonly #port: StrokePort
  readonly #onRefusal: (refusal: Refusal | undefined) => void
  #line: Step[] = []
  /** The step that waits for its answer; it is not in the line. */
  #underWay: Step | undefined
  #waiting: (() => void)[] = []

  constructor(
    designId: string,
    port: StrokePort,
    onRefusal: (refusal: Refusal | undefined) => void,
  ) {
    this.#designId = designId
    this.#port = port
    this.#onRefusal = onRefusal
  }

  stroke(position: number, stroke: Stroke): void {
    const last = this.#line.at(-1)
    if (last?.kind === 'stroke' && last.strokes.length < MOST_AT_ONCE) last.strokes.push(stroke)
    else this.#line.push({ kind: 'stroke', position, strokes: [stroke] })
    void this.#send()
  }

  moveTo(position: number): void {
    if (this.#line.at(-1)?.kind === 'move') this.#line.pop()
    this.#line.push({ kind: 'move', position })
    void this.#send()
  }

  /** Tries again what the store had refused. */
  tryAgain(): void {
    this.#onRefusal(undefined)
    void this.#send()
  }

  /** Resolves when all is written, or the store has refused something. */
  settled(): Promise<void> {
    if (this.#underWay === undefined) return Promise.resolve()
    return new Promise((done) => this.#waiting.push(done))
  }

  /** Hands over everything at once, without waiting for answers: the window is closing. */
  hurry(): void {
    for (const step of this.#line.splice(0)) void this.#ask(step)
  }

  async #send(): Promise<void> {
    if (this.#underWay !== undefined) return
    for (let step = this.#line.shift(); step !== undefined; step = this.#line.shift()) {
      this.#underWay = step
      const answer = await this.#ask(step)
      if (!answer.ok) {
        this.#line.unshift(step)
        this.#onRefusal(answer.error)
        break
      }
    }
    this.#underWay = undefined
    for (const done of this.#waiting.splice(0)) done()
  }

  #ask(step: Step): Promise<Answer<unknown>> {
    const designId = this.#designId
    return step.kind === 'move'
      ? this.#port.moveTo({ designId, position: step.position })
      : this.#port.stroke({
          designId,
          position: step.position,
          // The contract's type is the same, but its lists may be changed.
          strokes: step.strokes as CallInput<'drafts.stroke'>['strokes'],
        })
  }
}
