/** What came of a piece of work: its value, or that it was cancelled. */
export type StepsOutcome<T> = Readonly<{ kind: 'done'; value: T }> | Readonly<{ kind: 'cancelled' }>

/**
 * Drives a generator of steps to its end, or until `proceed` says no.
 *
 * @param steps - Work that yields its progress and returns its value.
 * @param proceed - Told of each progress; `false` cancels before the next step.
 */
export function runSteps<P, T>(
  steps: Generator<P, T>,
  proceed: (progress: P) => boolean = () => true,
): StepsOutcome<T> {
  for (;;) {
    const step = steps.next()
    if (step.done) return { kind: 'done', value: step.value }
    if (!proceed(step.value)) {
      steps.return(undefined as T)
      return { kind: 'cancelled' }
    }
  }
}
