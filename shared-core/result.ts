/** The outcome of something that may be refused: a value, or a refusal the caller must handle. */
export type Result<T, E> = Readonly<{ ok: true; value: T }> | Readonly<{ ok: false; error: E }>

/** Wraps a value as a success. */
export function ok<T>(value: T): Result<T, never> {
  return { ok: true, value }
}

/** Wraps a refusal as a failure. */
export function err<E>(error: E): Result<never, E> {
  return { ok: false, error }
}
