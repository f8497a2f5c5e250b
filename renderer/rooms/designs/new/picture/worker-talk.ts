import type { Picture, PictureProgress } from '../../../../../shared-core/colour/picture/picture.ts'
import type { PictureChart } from '../../../../../shared-core/colour/picture/picture-to-chart.ts'
import type { Refusal } from '../../../../../shared-core/refusal.ts'
import type { PictureAsked } from './picture-job.ts'

/** What the page tells the worker. A new `ask` ends the one before; `stop` ends it without another. */
export type ToWorker =
  | Readonly<{ kind: 'picture'; picture: Picture }>
  | Readonly<{ kind: 'ask'; turn: number; asked: PictureAsked }>
  | Readonly<{ kind: 'stop' }>

/** What the worker answers, each with the turn it belongs to. */
export type FromWorker =
  | Readonly<{ kind: 'progress'; turn: number; progress: PictureProgress }>
  | Readonly<{ kind: 'done'; turn: number; made: PictureChart }>
  | Readonly<{ kind: 'refused'; turn: number; refusals: readonly Refusal[] }>
