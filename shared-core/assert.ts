/** Throws when `condition` is false: a bug in the caller, never a refusal of user input. */
export function assert(condition: boolean, expectation: string): asserts condition {
  if (!condition) throw new Error(`Broken assumption: ${expectation}`)
}

/** Marks the end of an exhaustive switch; the compiler rejects a case that was left out. */
export function assertNever(value: never): never {
  throw new Error(`Unexpected case: ${JSON.stringify(value)}`)
}
