/** Something the set-up cannot do by itself: what happened, and what the reader can do about it. */
export class SetUpFailure extends Error {
  constructor(what, next) {
    super(`${what}\n  What to do: ${next}`)
    this.name = 'SetUpFailure'
  }
}
