import { describe, expect, it } from 'vitest'
import { badInput } from '../../../electron/service/bad-input.ts'
import { type CallName, calls } from '../../../shared-core/contract/calls.ts'

function refusalOf(name: CallName, input: unknown) {
  const parsed = calls[name].input.safeParse(input)
  if (parsed.success) throw new Error('expected bad input')
  return badInput(parsed.error.issues, input)
}

const line = { designId: 'des_123456', colourwayId: 'cw_123456', units: 10, priceMinor: null }
const order = {
  customer: 'Ferry',
  dueOn: '2026-12-04',
  promisedOn: '2026-11-25',
  note: '',
  lines: [line],
}

describe('badInput', () => {
  it.each([
    [
      'a fraction where a whole number belongs',
      { order: { ...order, lines: [line, { ...line, units: 9.5 }] } },
      {
        message: 'Order, lines 2, units: 9.5 was found.',
        next: 'Give a whole number.',
        field: 'order.lines.1.units',
      },
    ],
    [
      'a day that does not exist',
      { order: { ...order, dueOn: '31.02.2026' } },
      {
        message: 'Order, due on: “31.02.2026” was found.',
        next: 'Give a date such as 2026-12-04.',
        field: 'order.dueOn',
      },
    ],
    [
      'an empty name',
      { order: { ...order, customer: '' } },
      {
        message: 'Order, customer: an empty text was found.',
        next: 'Give a name.',
        field: 'order.customer',
      },
    ],
    [
      'a missing field',
      { order: { ...order, note: undefined } },
      { message: 'Order, note: nothing was found.', next: 'Give a text.', field: 'order.note' },
    ],
    [
      'an empty list',
      { order: { ...order, lines: [] } },
      {
        message: 'Order, lines: a list of 0 was found.',
        next: 'Give at least one line.',
        field: 'order.lines',
      },
    ],
    [
      'too large a number',
      { order: { ...order, lines: [{ ...line, units: 10_001 }] } },
      {
        message: 'Order, lines 1, units: 10001 was found.',
        next: 'Give a number of at most 10000.',
        field: 'order.lines.0.units',
      },
    ],
    [
      'a field that the call does not know',
      { order, urgent: true },
      {
        message: 'Urgent: true was found.',
        next: 'Give only fields this call knows.',
        field: 'urgent',
      },
    ],
    [
      'nothing at all',
      undefined,
      { message: 'The input: nothing was found.', next: 'Give a group of fields.' },
    ],
  ])('names the field, what was found and what is accepted: %s', (_, input, expected) => {
    expect(refusalOf('orders.save', input)).toEqual({ code: 'bad-input', ...expected })
  })

  it('lists the words of a choice', () => {
    expect(refusalOf('orders.list', { state: 'late' })).toEqual({
      code: 'bad-input',
      message: 'State: “late” was found.',
      next: 'Give open or all.',
      field: 'state',
    })
  })

  it('tells the fault of the nearest form where several are accepted', () => {
    const refusal = refusalOf('orders.cover', { today: '2026-11-25', order: { id: 'x' } })
    expect(refusal).toMatchObject({ field: 'order.id', next: 'Give an id such as mat_3f9k2m7q.' })
  })

  it('cuts what was found short', () => {
    const refusal = refusalOf('orders.list', { state: 'x'.repeat(500) })
    expect(refusal.message.length).toBeLessThan(90)
  })
})
