import { describe, expect, it } from 'vitest'
import { linesFor } from '../../../renderer/rooms/bench/lines-for.ts'

type Order = Parameters<typeof linesFor>[0][number]

function order(code: string, dueOn: string, ...lines: readonly Partial<Order['lines'][number]>[]) {
  const line = {
    versionId: 'ver_000001',
    designId: 'des_tidewrack',
    designName: 'Tidewrack diamond earrings',
    colourwayId: 'cw_slate01',
    colourwayName: 'Wet slate',
    unitName: 'pair',
    units: 10,
    made: 0,
    priceMinor: null,
  }
  return {
    id: `ord_${code}`,
    code,
    customer: 'Ferry House Gifts',
    promisedOn: '2026-11-25',
    dueOn,
    note: '',
    state: 'open',
    totalMinor: 0,
    lines: lines.map((own, at) => ({ ...line, id: `ln_${code}_${at}`, ...own })),
  } as const satisfies Order
}

const asked = { designId: 'des_tidewrack', colourwayId: 'cw_slate01' }
const found = (...orders: readonly Order[]) => linesFor(orders, asked).map(({ line }) => line.id)

describe('linesFor', () => {
  it('gives the promise that is due first before the others', () => {
    const later = order('OR-1', '2026-12-18', {})
    const sooner = order('OR-2', '2026-12-04', {})
    expect(found(later, sooner)).toEqual(['ln_OR-2_0', 'ln_OR-1_0'])
  })

  it('leaves out what is made already, and other designs and colourways', () => {
    expect(
      found(
        order(
          'OR-1',
          '2026-12-04',
          { made: 10 },
          { designId: 'des_sluice01' },
          { colourwayId: 'cw_brine01' },
          { made: 9 },
        ),
      ),
    ).toEqual(['ln_OR-1_3'])
  })
})
