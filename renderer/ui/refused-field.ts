const REFUSED = '[aria-invalid="true"]:not(:disabled)'

/**
 * Puts the focus on the first field that says it is refused, in the sheet or room around a button; says
 * whether there is one. What she typed there would be left out in silence if the rest were saved.
 */
export function leadToRefused(button: HTMLElement): boolean {
  const around = button.closest('[role="dialog"]') ?? button.closest('.room') ?? document
  const field = [...around.querySelectorAll<HTMLElement>(REFUSED)].find(
    (one) => one.getClientRects().length > 0,
  )
  field?.focus()
  return field !== undefined
}
