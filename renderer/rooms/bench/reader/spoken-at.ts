import {
  lineOf,
  type ReaderMap,
  type ReaderStride,
} from '../../../../shared-core/bench/reader-place.ts'
import { lineName, speakLine, type Telling, tellStep } from './tell-line.ts'

type Spoken = Readonly<{
  map: ReaderMap
  at: number
  stride: ReaderStride
  unitName: string
  tell: Telling
}>

/** What is said at a place: the unit before it where one has just been made, then the row or the step. */
export function spokenAt({ map, at, stride, unitName, tell }: Spoken): string {
  const placed = lineOf(map, at)
  if (placed === undefined) return ''
  if (at >= map.steps) return `All ${map.units === 1 ? '' : `${map.units} `}done.`
  const unit = Math.floor(at / map.stepsInUnit)
  const step = (at % map.stepsInUnit) - placed.from
  const isNewUnit = at > 0 && at % map.stepsInUnit === 0
  const before = isNewUnit ? `${unitName} ${unit} of ${map.units} done. ` : ''
  const what = placed.line.steps[step]
  if (stride === 'row' || what === undefined) return before + speakLine(placed, tell)
  const head = step === 0 ? `${lineName(placed)}. ` : ''
  return before + head + tellStep(what, tell)
}
