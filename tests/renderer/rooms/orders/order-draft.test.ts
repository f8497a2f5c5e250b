import { expect, test } from 'vitest'
import { blankLine, inputOf, isChosen } from '../../../../renderer/rooms/orders/order-draft.ts'

const chosen = { ...blankLine(), designId: 'des_a', colourwayId: 'cw_a' }
const waiting = { ...blankLine(), designId: 'des_b' }
const draft = { customer: 'Ferry House Gifts', promisedOn: '2026-11-25', dueOn: '2026-12-09' }

test('an order can be promised once every design chosen has its colourway', () => {
  expect(isChosen({ lines: [chosen] })).toBe(true)
  expect(isChosen({ lines: [chosen, blankLine()] })).toBe(true)
})

test('an order cannot be promised while a line chosen would be left out', () => {
  const lines = [chosen, waiting]
  expect(inputOf({ ...draft, note: '', lines })?.lines).toHaveLength(1)
  expect(isChosen({ lines })).toBe(false)
  expect(isChosen({ lines: [blankLine()] })).toBe(false)
})
