import type { RouteSettings } from '../../../../shared-core/design/design.ts'

/** How a panel is worked, in one line for the list of versions. */
export function workingWords(route: RouteSettings): string {
  const words = [
    route.startRow === undefined ? '' : `starts at row ${route.startRow + 1}`,
    route.startSide === undefined ? '' : `from the ${route.startSide}`,
    route.start === undefined ? '' : route.start === 'ladder' ? 'ladder start' : 'two-bead start',
    route.lockEveryRow === true ? 'every row locked' : '',
    route.reinforce === true ? 'rows reinforced' : '',
    route.workingLengthMm === undefined ? '' : `threads up to ${route.workingLengthMm} mm`,
  ].filter((word) => word !== '')
  if (words.length === 0) return 'Worked as the studio chooses'
  const text = words.join(', ')
  return text.charAt(0).toUpperCase() + text.slice(1)
}
