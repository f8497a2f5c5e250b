import type { StepWords } from '../route/bench-steps.ts'
import type { EventList } from '../route/event-list.ts'
import type { ReaderStretch } from './reader-script.ts'

/** What one part's lines are written from. */
export type StretchSource = Readonly<{
  part: Pick<ReaderStretch, 'partId' | 'name' | 'kind' | 'copy' | 'copies' | 'place'>
  /** The route as it is told: of the image, where the copy is a mirrored one. */
  route: EventList
  words: StepWords
  /** The name of a bead of the route, for the brief words. */
  nameOf: (bead: number) => string
  /** The bead of the chart as it is drawn, for a bead of the route. */
  drawnBead: (bead: number) => number
  /** Slot index of a bead of the chart as it is drawn. */
  slotOf: Uint16Array
  perBeadS: number
  perRowS: number
}>
