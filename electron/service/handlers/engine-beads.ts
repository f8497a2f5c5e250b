import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import {
  beadCv,
  bestCalibration,
  poolWeighings,
  tableCalibration,
} from '../../../shared-core/beads/calibration.ts'
import { beadsToCount } from '../../../shared-core/beads/counting-error.ts'
import {
  countOfWeighing,
  massOfCount,
  needMass,
} from '../../../shared-core/beads/grams-and-counts.ts'
import { fillOf, holeCapacity } from '../../../shared-core/beads/hole-capacity.ts'
import { checkWeighing, netMg, type Weighing } from '../../../shared-core/beads/weighing.ts'
import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import { learnPace } from '../../../shared-core/design/labour-learning.ts'
import { referencePace } from '../../../shared-core/design/labour-pace.ts'
import { fillAdvice } from '../../../shared-core/route/read-fill.ts'
import { massMg } from '../../../shared-core/units/mass.ts'
import { Refused } from '../refused.ts'
import { checkedLearned, checkPace } from './engine-learned.ts'
import { formIn, needleIn, refuseFirst, tablesWith, threadIn } from './engine-tables.ts'
import type { PureHandler } from './handler.ts'

type Sent = Readonly<{ beads: number; grossMg: number; tareMg: number; digitMg: number }>

/** Weighings as sent, each checked against the form. */
export function checkedWeighings(
  sent: readonly Sent[],
  form: BeadForm,
  path = 'weighings',
): readonly Weighing[] {
  return sent.map((weighing, at) => {
    const checked = checkWeighing(
      {
        beads: weighing.beads,
        grossMg: massMg(weighing.grossMg),
        tareMg: massMg(weighing.tareMg),
        digitMg: weighing.digitMg,
      },
      form,
    )
    return checked.ok ? checked.value : refuseFirst([checked.error], `${path}.${at}.`)
  })
}

export const listTables: PureHandler<'engine.tables'> = ({ tables }) => {
  const { forms, threads, needles } = tablesWith(tables)
  return { forms: [...forms], threads: [...threads], needles: [...needles], pace: referencePace }
}

export const calibrate: PureHandler<'engine.calibrate'> = ({ formId, weighings, tables }) => {
  const form = formIn(tablesWith(tables), formId)
  const pooled = poolWeighings(checkedWeighings(weighings, form), beadCv(form))
  const none = { beads: 0, weighings: 0, halfDigit: false, disagree: false }
  return pooled ?? { ...tableCalibration(form), ...none }
}

export const adviseCounting: PureHandler<'engine.beadsToCount'> = (input) => {
  const form = formIn(tablesWith(input.tables), input.formId)
  const beadMg = 1000 / form.beadsPerGram.value
  const cv = beadCv(form)
  const { digitMg, accuracyPercent } = input
  const beads = beadsToCount({ cv, accuracy: accuracyPercent / 100, digitMg, beadMg })
  return { beads, beadMg, cv }
}

export const countByWeight: PureHandler<'engine.countByWeight'> = (input) => {
  const form = formIn(tablesWith(input.tables), input.formId)
  const calibration = bestCalibration(form, checkedWeighings(input.weighings, form))
  const lot = {
    grossMg: massMg(input.grossMg),
    tareMg: massMg(input.tareMg),
    digitMg: input.digitMg,
  }
  const count = countOfWeighing(lot, calibration)
  if (!count.ok) throw new Refused(count.error)
  return { netMg: netMg(lot), count: count.value, beadsPerGram: calibration.beadsPerGram }
}

export const weighCount: PureHandler<'engine.massOfCount'> = (input) => {
  const form = formIn(tablesWith(input.tables), input.formId)
  const calibration = bestCalibration(form, checkedWeighings(input.weighings, form))
  const { cullRates } = checkedLearned(input)
  return {
    massMg: massOfCount(input.count, calibration),
    needMg: needMass(input.count, calibration, cullRates?.[form.id] ?? form.cullRate),
    beadsPerGram: calibration.beadsPerGram,
  }
}

export const fillHole: PureHandler<'engine.holeFill'> = (input) => {
  const tables = tablesWith(input.tables)
  const form = formIn(tables, input.formId)
  const thread = threadIn(tables, input.threadId)
  const needle = needleIn(tables, input.needleSize)
  const { passes, strands } = input
  const holds = holeCapacity({
    holeMm: form.holeMm,
    threadMm: thread.diameterMm,
    needleMm: needle.wireMm,
    doubled: strands === 2,
  })
  const fits = passes <= holds.value
  return {
    holds,
    fill: fillOf(passes, holds.value),
    states: Array.from({ length: passes }, (_, pass) => fillOf(pass + 1, holds.value)),
    sticksAt: fits ? null : holds.value + 1,
    advice: fits ? null : fillAdvice({ thread, needle, tables, strands }, form, passes),
  }
}

export const learn: PureHandler<'engine.learnPace'> = ({ sessions, prior }) => {
  if (prior !== undefined) checkPace(prior)
  return learnPace(sessions, prior ?? referencePace) as CallOutput<'engine.learnPace'>
}
