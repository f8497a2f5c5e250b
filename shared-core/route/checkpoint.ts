/** A place in long work where it may be given up: throws `Stopped` when nobody wants the result any more. */
export type Checkpoint = () => void

/** Thrown by a checkpoint through work that is no longer wanted; caught where the work was begun. */
export class Stopped extends Error {
  override readonly name = 'Stopped'
}

/** Work that always goes on to its end. */
export const neverStops: Checkpoint = () => {}

/** A checkpoint that asks whether the work is cancelled. */
export function checkpointOf(isCancelled: (() => boolean) | undefined): Checkpoint {
  if (isCancelled === undefined) return neverStops
  return () => {
    if (isCancelled()) throw new Stopped()
  }
}
