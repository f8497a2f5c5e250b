import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  lowerOfCostAndNrv,
  materialCarrying,
  netRealisableValue,
  reversalOfWriteDown,
} from '../../../shared-core/costing/net-realisable-value.ts'

type Figures = Readonly<Record<string, number>>
type Vector = Readonly<{
  id: string
  inputs: Readonly<{ items?: readonly Figures[] }> & Readonly<Record<string, unknown>>
  expected: Readonly<Record<string, unknown>>
}>

const vectors = JSON.parse(
  readFileSync(new URL('../../fixtures/vectors/nrv.json', import.meta.url), 'utf8'),
) as readonly Vector[]

function vector(
  id: string,
): Readonly<{ inputs: Figures; expected: Readonly<Record<string, unknown>> }> {
  const found = vectors.find((one) => one.id === id)
  if (!found) throw new Error(`no vector ${id}`)
  return { inputs: found.inputs as unknown as Figures, expected: found.expected }
}

function itemOf(figures: Figures) {
  return {
    costMinor: figures['cost'] ?? 0,
    priceMinor: figures['price'] ?? 0,
    completionMinor: figures['completion'] ?? 0,
    sellingMinor: figures['selling'] ?? 0,
  }
}

describe('lowerOfCostAndNrv', () => {
  it.each(vectors.filter((one) => one.inputs.items))(
    '$id carries each item as published',
    (one) => {
      const carried = (one.inputs.items ?? []).map(
        (item) => lowerOfCostAndNrv(itemOf(item)).carryingMinor,
      )
      expect(carried).toEqual(one.expected['carrying'])
      expect(carried.reduce((a, b) => a + b, 0)).toBe(one.expected['total'])
    },
  )

  it('lies from 0 to cost, with the write-down making up the rest', () => {
    const amount = fc.nat(100_000)
    const item = fc.record({
      costMinor: amount,
      priceMinor: amount,
      completionMinor: amount,
      sellingMinor: amount,
    })
    fc.assert(
      fc.property(item, (valued) => {
        const { carryingMinor, writeDownMinor } = lowerOfCostAndNrv(valued)
        expect(carryingMinor).toBeGreaterThanOrEqual(0)
        expect(carryingMinor).toBeLessThanOrEqual(valued.costMinor)
        expect(carryingMinor + writeDownMinor).toBe(valued.costMinor)
        if (netRealisableValue(valued) >= valued.costMinor) expect(writeDownMinor).toBe(0)
      }),
    )
  })
})

describe('materialCarrying', () => {
  it.each(['nrv-material-kept', 'nrv-material-written-down'])('%s follows IAS 2.32', (id) => {
    const { inputs, expected } = vector(id)
    const finished = {
      costMinor: inputs['finished_cost'] ?? 0,
      priceMinor: inputs['finished_price'] ?? 0,
      completionMinor: 0,
      sellingMinor: inputs['finished_selling'] ?? 0,
    }
    const material = {
      costMinor: inputs['material_cost'] ?? 0,
      replacementMinor: inputs['material_replacement'] ?? 0,
    }
    expect(netRealisableValue(finished)).toBe(expected['finished_nrv'])
    expect(materialCarrying(material, finished).carryingMinor).toBe(expected['material_carrying'])
  })
})

describe('reversalOfWriteDown', () => {
  it('takes back up to cost as IAS 2.33 says', () => {
    const { inputs, expected } = vector('nrv-reversal-cap')
    const costMinor = inputs['cost'] ?? 0
    const first = lowerOfCostAndNrv({
      costMinor,
      priceMinor: inputs['nrv_year1'] ?? 0,
      completionMinor: 0,
      sellingMinor: 0,
    })
    expect(first).toEqual({
      carryingMinor: expected['carrying_year1'],
      writeDownMinor: expected['write_down'],
    })
    const held = {
      costMinor,
      carryingMinor: first.carryingMinor,
      nrvMinor: inputs['nrv_year2'] ?? 0,
    }
    expect(reversalOfWriteDown(held)).toEqual({
      carryingMinor: expected['carrying_year2'],
      reversalMinor: expected['reversal'],
    })
  })

  it('never writes further down', () => {
    expect(reversalOfWriteDown({ costMinor: 100, carryingMinor: 80, nrvMinor: 60 })).toEqual({
      carryingMinor: 80,
      reversalMinor: 0,
    })
  })
})
