import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { billOfMaterials, unitsFor } from '../../../shared-core/design/bill.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import type { DesignReading, SlotCount } from '../../../shared-core/design/reading.ts'
import { needsPerUnit, unassignedKeys } from '../../../shared-core/stock/material-need.ts'
import { estimated, exactly, measured } from '../../../shared-core/units/spread.ts'

const slot = (label: string, name: string) =>
  ({ label, name, formId: 'cylinder-11', colourHex: '#3f5b63', finish: 'matte' }) as const

const body: DesignBody = {
  unitName: 'pair',
  palette: [slot('A', 'Wet slate'), slot('B', 'Samphire'), slot('C', 'Fog')],
  parts: [],
  extras: [
    { id: 'wire', kind: 'finding', name: 'Ear wire', count: 2 },
    { id: 'card', kind: 'packaging', name: 'Card', count: 1 },
    { id: 'ring', kind: 'finding', name: 'Jump ring', count: 0 },
  ],
  threadId: 'braided-6',
  needleSize: '12',
}

function reading(counts: readonly SlotCount[], spoolMm = estimated(2900, 3100.2, 3400.9)) {
  const thread = { inPieceMm: spoolMm, cutMm: [], inWorkMm: [], spoolMm }
  const zero = exactly(0)
  const whole: DesignReading = {
    beads: counts.reduce((sum, { count }) => sum + count, 0),
    counts,
    thread,
    widthMm: zero,
    heightMm: zero,
    unitMassMg: zero,
    labour: { setUpS: zero, stitchingS: zero, finishingS: zero, totalS: zero },
    work: [],
    parts: [],
    warnings: [],
  }
  return whole
}

const counts: readonly SlotCount[] = [
  {
    label: 'A',
    count: 412,
    massMg: measured(2030.1, 2059, 2090.7),
    needMg: measured(2071.4, 2101.02, 2133.3),
  },
  { label: 'B', count: 0, massMg: exactly(0), needMg: exactly(0) },
  { label: 'C', count: 40, massMg: exactly(200), needMg: estimated(200, 204, 208) },
]

const slate = { materialId: 'slate', unit: 'mg', lotsMatter: true } as const

describe('billOfMaterials', () => {
  it('lists slots, thread and extras with what must be at hand', () => {
    const bill = billOfMaterials(reading(counts), body, {
      'slot:A': slate,
      thread: { materialId: 'spool', unit: 'mm', lotsMatter: false },
    })
    expect(bill).toEqual([
      {
        key: 'slot:A',
        kind: 'bead',
        name: 'Wet slate',
        unit: 'mg',
        count: 412,
        quantity: 2102,
        low: 2071,
        high: 2134,
        basis: 'measured',
        material: slate,
      },
      {
        key: 'slot:C',
        kind: 'bead',
        name: 'Fog',
        unit: 'mg',
        count: 40,
        quantity: 204,
        low: 200,
        high: 208,
        basis: 'estimated',
      },
      {
        key: 'thread',
        kind: 'thread',
        name: 'Thread',
        unit: 'mm',
        quantity: 3101,
        low: 2900,
        high: 3401,
        basis: 'estimated',
        material: { materialId: 'spool', unit: 'mm', lotsMatter: false },
      },
      {
        key: 'extra:wire',
        kind: 'finding',
        name: 'Ear wire',
        unit: 'piece',
        count: 2,
        quantity: 2,
        low: 2,
        high: 2,
        basis: 'exact',
      },
      {
        key: 'extra:card',
        kind: 'packaging',
        name: 'Card',
        unit: 'piece',
        count: 1,
        quantity: 1,
        low: 1,
        high: 1,
        basis: 'exact',
      },
    ])
    expect(unassignedKeys(bill)).toEqual(['slot:C', 'extra:wire', 'extra:card'])
  })

  it('counts beads sold by the piece with the share of culls the masses show', () => {
    const faceted = { materialId: 'lamp amber', unit: 'piece', lotsMatter: false } as const
    const [line] = billOfMaterials(reading(counts), body, { 'slot:A': faceted })
    // 412 x 2101.02 / 2059 = 420.4
    expect(line).toMatchObject({ unit: 'piece', count: 412, quantity: 421 })
  })

  it('does not add a unit for the noise of binary fractions', () => {
    const noisy = 0.1 * 3 * 10 // 3.0000000000000004
    expect(noisy).toBeGreaterThan(3)
    const one = { label: 'A', count: 1, massMg: exactly(noisy), needMg: exactly(noisy) }
    expect(billOfMaterials(reading([one]), body, {})[0]?.quantity).toBe(3)
  })

  it('throws for a material whose unit its key cannot have', () => {
    const spool = { materialId: 'spool', unit: 'mm', lotsMatter: false } as const
    expect(() => billOfMaterials(reading(counts), body, { 'slot:A': spool })).toThrow('slot:A')
    expect(() => billOfMaterials(reading(counts), body, { 'extra:wire': spool })).toThrow('wire')
    expect(unitsFor('bead')).toEqual(['mg', 'piece'])
  })

  it('never asks for less than the reading says, nor a whole unit more', () => {
    const positive = fc.double({ min: 0.001, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(positive, fc.integer({ min: 1, max: 100_000 }), (mg, count) => {
        const one = { label: 'A', count, massMg: exactly(mg), needMg: exactly(mg) }
        const line = billOfMaterials(reading([one]), body, {})[0]
        expect(line?.count).toBe(count)
        expect(line?.quantity).toBeGreaterThanOrEqual(mg - 1e-9 * Math.max(1, mg))
        expect(line?.quantity).toBeLessThan(mg + 1)
        expect(line?.low).toBeLessThanOrEqual(line?.quantity ?? 0)
        expect(line?.high).toBeGreaterThanOrEqual(line?.quantity ?? 0)
      }),
    )
  })
})

describe('needsPerUnit', () => {
  it('sums a material that fills two slots', () => {
    const bill = billOfMaterials(reading(counts), body, { 'slot:A': slate, 'slot:C': slate })
    expect(needsPerUnit(bill)).toEqual([{ ...slate, quantity: 2306 }])
  })
})
