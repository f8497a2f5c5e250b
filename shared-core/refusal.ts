/**
 * Why something was refused, in words a maker can act on.
 *
 * `code` is stable and kebab-case; `message` says what was found and where; `next` says what is
 * accepted or what to do. `field` names the input (a path such as `lines.2.units`), `line` counts
 * from 1 in the file or text that was read.
 */
export type Refusal = Readonly<{
  code: string
  message: string
  next: string
  field?: string
  line?: number
}>
