import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fifoCosts } from '../../../shared-core/costing/fifo.ts'
import { type CostingMethod, issueCosts } from '../../../shared-core/costing/issue-costs.ts'
import { periodicAverageCosts } from '../../../shared-core/costing/periodic-average.ts'
import type { StockEvent } from '../../../shared-core/costing/stock-event.ts'
import {
  addFractions,
  compareFractions,
  divideFractions,
  type Fraction,
  fraction,
  fractionOfDecimal,
  fractionToNumber,
  multiplyFractions,
  sumFractions,
} from '../../../shared-core/units/fraction.ts'
import vectors from '../../fixtures/vectors/inventory_costing.json' with { type: 'json' }

const METHODS: readonly CostingMethod[] = ['fifo', 'moving-average', 'periodic-average']

/** Quantities in thousandths and costs in ten-thousandths make every figure of the vectors whole. */
function eventsOf(rows: readonly (readonly (string | number)[])[]): readonly StockEvent[] {
  return rows.map(([kind, quantity = 0, unitCost = 0]) => {
    const exact = fractionOfDecimal(String(quantity))
    const scaled = whole(multiplyFractions(exact, fraction(1000)))
    if (kind === 'sell') return { kind: 'issue', quantity: scaled }
    const cost = multiplyFractions(exact, fractionOfDecimal(String(unitCost)))
    return {
      kind: 'receive',
      quantity: scaled,
      costMinor: whole(multiplyFractions(cost, fraction(10_000))),
    }
  })
}

function whole(value: Fraction): number {
  expect(value.denominator).toBe(1n)
  return Number(value.numerator)
}

function major(minor: Fraction): number {
  return fractionToNumber(divideFractions(minor, fraction(10_000)))
}

function exactText(text: string): Fraction {
  const [n = '', d = '1'] = text.split('/')
  return fraction(BigInt(n), BigInt(d))
}

function methodOf(name: string): CostingMethod {
  if (name.startsWith('fifo')) return 'fifo'
  return name.startsWith('moving') ? 'moving-average' : 'periodic-average'
}

function costsOf(method: CostingMethod, events: readonly StockEvent[]) {
  const costs = issueCosts(method, events)
  if (!costs.ok) throw new Error(costs.error.message)
  return costs.value
}

describe('issueCosts', () => {
  it.each(vectors)('$id gives the published figures', ({ method, inputs, expected }) => {
    const costs = costsOf(methodOf(method), eventsOf(inputs.events))
    expect(Math.abs(major(costs.issuedExact) - expected.cogs)).toBeLessThan(1e-4)
    expect(Math.abs(major(costs.left.exact) - expected.ending_value)).toBeLessThan(1e-4)
    const ending = multiplyFractions(exactText(expected.ending_qty), fraction(1000))
    expect(costs.left.quantity).toBe(whole(ending))
    if ('cogs_exact' in expected && expected.cogs_exact !== undefined) {
      expect(divideFractions(costs.issuedExact, fraction(10_000))).toEqual(
        exactText(expected.cogs_exact),
      )
    }
    if ('cost_of_each_sale' in expected && expected.cost_of_each_sale !== undefined) {
      for (const [at, cost] of expected.cost_of_each_sale.entries()) {
        expect(Math.abs(major(costs.issues[at]?.exact ?? fraction(0)) - cost)).toBeLessThan(1e-5)
      }
    }
  })

  it('gives the average of the period as an exact ratio', () => {
    const costs = periodicAverageCosts([
      { kind: 'receive', quantity: 10, costMinor: 4000 },
      { kind: 'receive', quantity: 8, costMinor: 4400 },
      { kind: 'issue', quantity: 13 },
    ])
    expect(costs).toMatchObject({ ok: true, value: { averageUnitCost: fraction(8400, 18) } })
  })

  it('says from which receipts a FIFO issue was taken', () => {
    const costs = fifoCosts([
      { kind: 'receive', quantity: 10, costMinor: 400 },
      { kind: 'receive', quantity: 8, costMinor: 440 },
      { kind: 'issue', quantity: 13 },
    ])
    expect(costs).toMatchObject({
      value: {
        issues: [
          {
            costMinor: 565,
            draws: [
              { receipt: 0, quantity: 10, costMinor: 400 },
              { receipt: 1, quantity: 3, costMinor: 165 },
            ],
          },
        ],
        left: { quantity: 5, costMinor: 275 },
      },
    })
  })

  it.each(METHODS)('%s refuses to issue more than there is, naming the event', (method) => {
    const events: readonly StockEvent[] = [
      { kind: 'receive', quantity: 10, costMinor: 400 },
      { kind: 'issue', quantity: 6 },
      { kind: 'issue', quantity: 5 },
    ]
    expect(issueCosts(method, events)).toEqual({
      ok: false,
      error: {
        code: 'not-enough-stock',
        message: 'Event 3 issues 5 where 4 are at hand.',
        next: expect.any(String),
        line: 3,
      },
    })
  })

  it.each(METHODS)('%s costs nothing where nothing happened', (method) => {
    expect(costsOf(method, [])).toMatchObject({
      issues: [],
      issuedMinor: 0,
      left: { quantity: 0, costMinor: 0 },
    })
  })

  it.each(METHODS)('%s never drifts: a bead at a time costs what all at once would', (method) => {
    const events: StockEvent[] = [{ kind: 'receive', quantity: 1000, costMinor: 101 }]
    for (let bead = 0; bead < 1000; bead += 1) events.push({ kind: 'issue', quantity: 1 })
    const costs = costsOf(method, events)
    const firstHalf = costs.issues.slice(0, 500).reduce((sum, issue) => sum + issue.costMinor, 0)
    expect(firstHalf).toBe(50)
    expect(costs.issuedMinor).toBe(101)
    expect(costs.left.costMinor).toBe(0)
  })

  it('throws for quantities and costs no event can have', () => {
    const bad: readonly StockEvent[] = [
      { kind: 'receive', quantity: 0, costMinor: 1 },
      { kind: 'receive', quantity: 1, costMinor: -1 },
      { kind: 'issue', quantity: 1.5 },
    ]
    for (const event of bad) expect(() => issueCosts('fifo', [event])).toThrow('Broken assumption')
  })
})

/** Histories in which nothing is issued that is not there. */
const anyHistory = fc
  .array(
    fc.record({
      receive: fc.boolean(),
      quantity: fc.integer({ min: 1, max: 5000 }),
      costMinor: fc.nat(20_000),
    }),
    { maxLength: 25 },
  )
  .map((rows) => {
    let atHand = 0
    const events: StockEvent[] = []
    for (const { receive, quantity, costMinor } of rows) {
      if (receive) events.push({ kind: 'receive', quantity, costMinor })
      const issued = receive ? 0 : Math.min(quantity, atHand)
      if (issued > 0) events.push({ kind: 'issue', quantity: issued })
      atHand += receive ? quantity : -issued
    }
    return events
  })

describe.each(METHODS)('%s', (method) => {
  it('splits what was received into issued and left, exactly and in minor units', () => {
    fc.assert(
      fc.property(anyHistory, (events) => {
        const costs = costsOf(method, events)
        let [receivedMinor, receivedQuantity] = [0, 0]
        for (const event of events) {
          if (event.kind === 'issue') continue
          receivedMinor += event.costMinor
          receivedQuantity += event.quantity
        }
        expect(addFractions(costs.issuedExact, costs.left.exact)).toEqual(fraction(receivedMinor))
        expect(costs.issuedMinor + costs.left.costMinor).toBe(receivedMinor)
        expect(sumFractions(costs.issues.map((issue) => issue.exact))).toEqual(costs.issuedExact)
        expect(costs.issues.reduce((sum, issue) => sum + issue.costMinor, 0)).toBe(
          costs.issuedMinor,
        )
        const issued = costs.issues.reduce((sum, issue) => sum + issue.quantity, 0)
        expect(issued + costs.left.quantity).toBe(receivedQuantity)
      }),
    )
  })

  it('never gives a negative cost, and keeps the running sum within a unit of the exact one', () => {
    fc.assert(
      fc.property(anyHistory, (events) => {
        const costs = costsOf(method, events)
        let [minor, exact] = [0, fraction(0)]
        for (const issue of costs.issues) {
          expect(issue.costMinor).toBeGreaterThanOrEqual(0)
          expect(compareFractions(issue.exact, fraction(0))).toBeGreaterThanOrEqual(0)
          minor += issue.costMinor
          exact = addFractions(exact, issue.exact)
          expect(Math.abs(minor - fractionToNumber(exact))).toBeLessThanOrEqual(0.5 + 1e-6)
        }
        expect(costs.left.costMinor).toBeGreaterThanOrEqual(0)
      }),
    )
  })
})

describe('the three methods', () => {
  it('agree when every receipt costs the same a unit', () => {
    fc.assert(
      fc.property(anyHistory, fc.nat(50), (events, unitCost) => {
        const even = events.map((event) =>
          event.kind === 'receive' ? { ...event, costMinor: event.quantity * unitCost } : event,
        )
        const [fifo, moving, periodic] = METHODS.map((method) => costsOf(method, even).issuedExact)
        expect(moving).toEqual(fifo)
        expect(periodic).toEqual(fifo)
      }),
    )
  })

  it('stay exact and quick over thousands of events', () => {
    const events: StockEvent[] = []
    for (let at = 0; at < 3000; at += 1) {
      events.push({ kind: 'receive', quantity: 7000 + (at % 211), costMinor: 390 + (at % 47) })
      events.push({ kind: 'issue', quantity: 6001 + (at % 613) })
    }
    const before = performance.now()
    const costs = costsOf('moving-average', events)
    expect(performance.now() - before).toBeLessThan(2000)
    const received = events.reduce(
      (sum, event) => sum + (event.kind === 'receive' ? event.costMinor : 0),
      0,
    )
    expect(costs.issuedMinor + costs.left.costMinor).toBe(received)
    expect(addFractions(costs.issuedExact, costs.left.exact)).toEqual(fraction(received))
  })
})
