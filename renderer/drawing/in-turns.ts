/** Asks for a turn of the page, which tells when it is over; gives what takes the asking back. */
export type AskTurn = (turn: (isOver: () => boolean) => void) => () => void

/** A turn lasts so long at most, ms: input waits no longer, and a frame has room for it. */
const LONGEST_MS = 4

/** Turns of this page, behind whatever it has to do first: input, frames, answers. */
export const pageTurns: AskTurn = (turn) => {
  const asked = setTimeout(() => {
    const end = performance.now() + LONGEST_MS
    turn(() => performance.now() >= end)
  })
  return () => clearTimeout(asked)
}

/**
 * Takes the steps of a work in as many turns as it needs, at least one step in each, and says when the
 * last is done. What it gives leaves the work where it is: nothing more is taken or said.
 */
export function inTurns(
  steps: Iterator<unknown>,
  onDone: () => void,
  askTurn: AskTurn = pageTurns,
): () => void {
  let takeBack = askTurn(turn)
  function turn(isOver: () => boolean): void {
    do {
      if (steps.next().done === true) {
        onDone()
        return
      }
    } while (!isOver())
    takeBack = askTurn(turn)
  }
  return () => takeBack()
}
