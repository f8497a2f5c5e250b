/** What one step of a test run came to. `passed` and `failed` count tests; a check counts only when it fails. */
export type StepEnd = Readonly<{
  name: string
  seconds: number
  passed: number
  failed: number
  /** What to read when something failed; empty otherwise, and when it has been shown already. */
  output: string
}>

/** One step: its name, and how to do it. */
export type Step = Readonly<{ name: string; run: () => Promise<StepEnd> }>
