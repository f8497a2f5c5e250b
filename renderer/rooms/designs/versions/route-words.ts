import type { DesignChange } from '../../../../shared-core/design/design-change.ts'
import type { Format } from '../../../app/format.ts'

type RouteChange = Extract<DesignChange, { kind: 'route' }>

const NAMES: Readonly<Record<RouteChange['setting'], string>> = {
  startRow: 'start row',
  startSide: 'side it starts at',
  start: 'start',
  lockEveryRow: 'lock pass at every row’s start',
  reinforce: 'second pass through each row',
  loopPasses: 'times round each loop',
  startTailMm: 'tail at the start',
  endTailMm: 'tail at the end',
  workingLengthMm: 'longest thread',
}

/** How a setting of the working changed: `start row 12 instead of as the studio chooses`. */
export function routeWords({ setting, from, to }: RouteChange, format: Format): string {
  const write = (value: RouteChange['to']) => valueWords(setting, value, format)
  return `${NAMES[setting]} ${write(to)} instead of ${write(from)}`
}

function valueWords(
  setting: RouteChange['setting'],
  value: RouteChange['to'],
  format: Format,
): string {
  if (value === undefined) return 'as the studio chooses'
  if (typeof value === 'boolean') return value ? 'made' : 'left out'
  if (setting === 'startRow') return format.count(Number(value) + 1)
  if (setting.endsWith('Mm')) return format.thread(Number(value))
  return value === 'two-bead' ? 'with two beads' : String(value)
}
