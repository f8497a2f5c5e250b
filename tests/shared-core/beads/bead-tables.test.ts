import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import {
  findForm,
  findNeedle,
  findThread,
  referenceTables,
} from '../../../shared-core/beads/bead-tables.ts'
import { finishEffects, formWithFinish } from '../../../shared-core/beads/finish-effects.ts'
import { beadForms } from '../../../shared-core/beads/forms.ts'
import { withUserForms } from '../../../shared-core/beads/user-forms.ts'
import { estimated, measured, type Spread } from '../../../shared-core/units/spread.ts'

const formOf = (id: string) => {
  const form = findForm(referenceTables, id)
  if (form === undefined) throw new Error(`no form ${id}`)
  return form
}

const ownForm = (over: Partial<BeadForm> = {}): BeadForm => ({
  id: 'brine-cylinder',
  name: 'Brine cylinder, measured',
  family: 'cylinder',
  sizeLabel: '11/0',
  diameterMm: measured(1.58, 1.6, 1.62),
  lengthMm: measured(1.29, 1.31, 1.33),
  holeMm: measured(0.78, 0.8, 0.82),
  beadsPerGram: measured(196, 199, 202),
  cullRate: estimated(0.01, 0.02, 0.03),
  ...over,
})

describe('referenceTables', () => {
  it('knows each form, thread and needle once', () => {
    const { forms, threads, needles } = referenceTables
    for (const keys of [
      forms.map(({ id }) => id),
      threads.map(({ id }) => id),
      needles.map(({ size }) => size),
    ]) {
      expect(new Set(keys).size).toBe(keys.length)
    }
  })

  it('passes its own checks', () => {
    const empty = { forms: [], threads: [], needles: [] }
    expect(withUserForms(empty, referenceTables)).toEqual({ ok: true, value: referenceTables })
  })

  it('gives the 11/0 cylinder its trade figures', () => {
    expect(formOf('cylinder-11/0')).toMatchObject({
      family: 'cylinder',
      diameterMm: { value: 1.6 },
      lengthMm: { value: 1.3 },
      holeMm: { value: 0.8 },
      beadsPerGram: { value: 200, low: 190, high: 210, basis: 'estimated' },
      cullRate: { value: 0.02 },
    })
    expect(findThread(referenceTables, 'braided-6lb')?.diameterMm.value).toBe(0.17)
    expect(findNeedle(referenceTables, '12')?.wireMm.value).toBe(0.36)
    expect(findForm(referenceTables, 'no-such-form')).toBeUndefined()
  })

  // A turned glass bead weighs pi/4 (d^2 - h^2) l x 2.5 mg; rounds are about 0.85 of that cylinder.
  it.each(beadForms.filter(({ family }) => ['cylinder', 'rocaille', 'bugle'].includes(family)))(
    '$id weighs what its glass would',
    ({ diameterMm: d, lengthMm: l, holeMm: h, beadsPerGram, family }) => {
      const share = family === 'rocaille' ? 0.87 : 1
      const mg = (Math.PI / 4) * (d.value ** 2 - h.value ** 2) * l.value * 2.5 * share
      expect(beadsPerGram.value / (1000 / mg)).toBeGreaterThan(0.8)
      expect(beadsPerGram.value / (1000 / mg)).toBeLessThan(1.25)
    },
  )
})

describe('formWithFinish', () => {
  it('makes a metallic bead heavier, its hole narrower and its culls more', () => {
    const form = formOf('rocaille-japanese-11/0')
    const metallic = formWithFinish(form, 'metallic')
    expect(metallic.beadsPerGram.value).toBeCloseTo(110 / 1.05, 9)
    expect(metallic.beadsPerGram.low).toBeCloseTo(105 / 1.1, 9)
    expect(metallic.holeMm.value).toBeLessThan(form.holeMm.value)
    expect(metallic.cullRate.value).toBeCloseTo(0.075, 9)
  })

  it('keeps every spread in order for every form and finish', () => {
    const inOrder = ({ low, value, high }: Spread) => low <= value && value <= high
    for (const form of beadForms) {
      for (const finish of Object.keys(finishEffects) as (keyof typeof finishEffects)[]) {
        const { beadsPerGram, holeMm, cullRate } = formWithFinish(form, finish)
        expect([beadsPerGram, holeMm, cullRate].every(inOrder)).toBe(true)
      }
    }
  })

  it('leaves an opaque bead as it is', () => {
    expect(formWithFinish(formOf('cube-3'), 'opaque')).toBe(formOf('cube-3'))
  })
})

describe('withUserForms', () => {
  it('adds a form of the workshop behind the reference ones', () => {
    const tables = withUserForms(referenceTables, { forms: [ownForm()] })
    expect(tables.ok && tables.value.forms.at(-1)).toEqual(ownForm())
    expect(tables.ok && tables.value.forms.length).toBe(beadForms.length + 1)
  })

  it('replaces a reference form of the same id in place', () => {
    const own = ownForm({ id: 'cylinder-11/0' })
    const tables = withUserForms(referenceTables, { forms: [own] })
    expect(tables.ok && tables.value.forms.length).toBe(beadForms.length)
    expect(tables.ok && findForm(tables.value, 'cylinder-11/0')).toEqual(own)
  })

  it('names each figure it refuses', () => {
    const result = withUserForms(referenceTables, {
      forms: [
        ownForm({
          id: ' ',
          holeMm: { value: 2, low: 2, high: 2, basis: 'measured' },
          beadsPerGram: { value: 100, low: 200, high: 300, basis: 'measured' },
        }),
      ],
      threads: [
        { id: 't', name: 't', construction: 'flat', diameterMm: estimated(0, 0, 0), tex: 0 },
      ],
      needles: [{ size: '', wireMm: estimated(0.3, 0.3, 9) }],
    })
    expect(!result.ok && result.error.map(({ code, field }) => [code, field])).toEqual([
      ['bead-table-no-name', 'forms.0.id'],
      ['bead-table-out-of-range', 'forms.0.beadsPerGram'],
      ['bead-hole-too-wide', 'forms.0.holeMm'],
      ['bead-table-out-of-range', 'threads.0.diameterMm'],
      ['bead-table-out-of-range', 'threads.0.tex'],
      ['bead-table-no-name', 'needles.0.size'],
      ['bead-table-out-of-range', 'needles.0.wireMm'],
    ])
  })

  it('lets no disordered or endless figure in, whatever it is', () => {
    const any = fc.double()
    fc.assert(
      fc.property(any, any, any, (low, value, high) => {
        const diameterMm = { low, value, high, basis: 'measured' } as const
        const result = withUserForms(referenceTables, { forms: [ownForm({ diameterMm })] })
        const usable = low >= 0.5 && low <= value && value <= high && high <= 60 && value > 0.8
        expect(result.ok).toBe(usable)
      }),
    )
  })
})
