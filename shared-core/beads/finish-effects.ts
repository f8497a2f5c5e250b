import { estimated, type Spread, weakerBasis } from '../units/spread.ts'
import type { BeadFinish, BeadForm } from './bead-form.ts'

/**
 * What a finish does to the plain glass bead: `massFactor` multiplies its mass, `holeFactor` its
 * hole's diameter, `cullAdded` is added to its cull rate (0 to 1).
 */
export type FinishEffect = Readonly<{ massFactor: Spread; holeFactor: Spread; cullAdded: Spread }>

const none = estimated(1, 1, 1)
const noCulls = estimated(0, 0, 0)
const plain: FinishEffect = { massFactor: none, holeFactor: none, cullAdded: noCulls }

/**
 * Effect of each finish on weight, hole and culls.
 *
 * A metal coat makes a bead heavier and its hole narrower, etching takes a little away, linings
 * narrow some holes. Sizes of the effects are trade knowledge: their spreads are honest, not narrow.
 */
export const finishEffects: Readonly<Record<BeadFinish, FinishEffect>> = {
  opaque: plain,
  gloss: plain,
  transparent: plain,
  iridescent: plain,
  matte: {
    massFactor: estimated(0.97, 0.985, 1),
    holeFactor: estimated(1, 1.01, 1.03),
    cullAdded: noCulls,
  },
  lined: {
    massFactor: estimated(0.97, 1, 1.03),
    holeFactor: estimated(0.9, 0.97, 1),
    cullAdded: estimated(0.02, 0.035, 0.05),
  },
  metallic: {
    massFactor: estimated(1, 1.05, 1.1),
    holeFactor: estimated(0.92, 0.97, 1),
    cullAdded: estimated(0.02, 0.035, 0.05),
  },
}

function times(a: Spread, b: Spread): Spread {
  return {
    value: a.value * b.value,
    low: a.low * b.low,
    high: a.high * b.high,
    basis: weakerBasis(a.basis, b.basis),
  }
}

function inverse(a: Spread): Spread {
  return { value: 1 / a.value, low: 1 / a.high, high: 1 / a.low, basis: a.basis }
}

/** The form as it comes in one finish: beads per gram, hole and cull rate changed by the finish's effect. */
export function formWithFinish(form: BeadForm, finish: BeadFinish): BeadForm {
  const effect = finishEffects[finish]
  if (effect === plain) return form
  const cull = (key: 'low' | 'value' | 'high') =>
    Math.min(0.95, form.cullRate[key] + effect.cullAdded[key])
  return {
    ...form,
    beadsPerGram: times(form.beadsPerGram, inverse(effect.massFactor)),
    holeMm: times(form.holeMm, effect.holeFactor),
    cullRate: {
      low: cull('low'),
      value: cull('value'),
      high: cull('high'),
      basis: weakerBasis(form.cullRate.basis, effect.cullAdded.basis),
    },
  }
}
