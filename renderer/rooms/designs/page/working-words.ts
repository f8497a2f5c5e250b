import type { RouteSettings } from '../../../../shared-core/design/design.ts'
import { capital } from '../../../app/capital.ts'
import type { Format } from '../../../app/format.ts'

/** How a panel is worked, in one line for the list of versions. */
export function workingWords(route: RouteSettings, { count, thread }: Format): string {
  const words = [
    route.startRow === undefined ? '' : `starts at row ${route.startRow + 1}`,
    route.startSide === undefined ? '' : `from the ${route.startSide}`,
    route.start === undefined ? '' : route.start === 'ladder' ? 'ladder start' : 'two-bead start',
    route.lockEveryRow === true ? 'every row locked' : '',
    route.reinforce === true ? 'rows reinforced' : '',
    told(route.loopPasses, (times) => `${count(times)} times round a loop`),
    told(route.startTailMm, (mm) => `a first tail of ${thread(mm)}`),
    told(route.endTailMm, (mm) => `a last tail of ${thread(mm)}`),
    told(route.workingLengthMm, (mm) => `threads up to ${thread(mm)}`),
  ].filter((word) => word !== '')
  if (words.length === 0) return 'Worked as the studio chooses'
  const text = words.join(', ')
  return capital(text)
}

function told(value: number | undefined, words: (value: number) => string): string {
  return value === undefined ? '' : words(value)
}
