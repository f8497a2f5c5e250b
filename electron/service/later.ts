/**
 * The rest of an answer that needs the store no more and takes long: made after the call's turn, so
 * that nobody waits behind it.
 */
export class Later<T> {
  readonly make: () => Promise<T>

  constructor(make: () => Promise<T>) {
    this.make = make
  }
}
