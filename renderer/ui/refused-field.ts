import { flushSync } from 'react-dom'
import { ASKED, LACKS } from './use-missing.ts'

const REFUSED = '[aria-invalid="true"]:not(:disabled)'

/**
 * Asks every field around a button for what it lacks, then puts the focus on the first that says it is
 * refused; says whether there is one. What she typed or left empty there would be passed over in silence
 * if the rest were saved.
 */
export function leadToRefused(button: HTMLElement): boolean {
  const lacking = [...around(button).querySelectorAll(LACKS)]
  // What a field lacks must stand there before the focus comes, so that it is read out with the field.
  if (lacking.length > 0) {
    flushSync(() => {
      for (const field of lacking) field.dispatchEvent(new Event(ASKED))
    })
  }
  return leadToTold(button)
}

/** Puts the focus on the first field around a button that says by now that it is refused. */
export function leadToTold(button: HTMLElement): boolean {
  const field = [...around(button).querySelectorAll<HTMLElement>(REFUSED)].find(
    (one) => one.getClientRects().length > 0,
  )
  field?.focus()
  return field !== undefined
}

/** The sheet, room or page that a button belongs to. */
function around(button: HTMLElement): Element | Document {
  return button.closest('[role="dialog"]') ?? button.closest('.room') ?? document
}
