import { describe, expect, it } from 'vitest'
import { isPieceCode } from '../../../../shared-core/pieces/piece-code.ts'
import { calendarDate, isoWeekday } from '../../../../shared-core/units/calendar-date.ts'
import { openSampleStudio, openStudio, TODAY } from '../open-studio.ts'

describe('the Saltmarsh sample', () => {
  // Time of the processor, not of the wall: other tests run beside this one.
  it('takes under two seconds of work to tell', async () => {
    const studio = await openStudio()
    const before = process.cpuUsage()
    await studio.ask('workshop.begin', {
      ...{ with: 'sample', name: 'Saltmarsh', currency: 'EUR', decimalMark: ',', today: TODAY },
    })
    const { user, system } = process.cpuUsage(before)
    expect((user + system) / 1_000).toBeLessThan(2_000)
    await studio.close()
  })

  it('fills every room', async () => {
    const { ask, close } = await openSampleStudio()
    const { workshop, channels, places, suppliers } = await ask('workshop.read', {})
    expect(workshop?.name).toBe('Saltmarsh Beadworks')
    expect(channels.map(({ kind }) => kind)).toEqual(['market', 'consignment', 'web', 'wholesale'])
    expect([places.length, suppliers.length]).toEqual([4, 3])
    const { materials } = await ask('materials.list', {})
    expect(materials.filter(({ kind }) => kind === 'bead').length).toBeGreaterThanOrEqual(18)
    expect(materials.filter(({ lots }) => lots > 1).length).toBeGreaterThanOrEqual(2)
    expect((await ask('designs.list', {})).designs).toHaveLength(8)
    const { pieces } = await ask('pieces.list', { state: 'all' })
    expect(new Set(pieces.map(({ state }) => state))).toEqual(
      new Set(['here', 'reserved', 'sold', 'given']),
    )
    const { attention } = await ask('today.read', { today: TODAY })
    expect(new Set(attention.map(({ kind }) => kind))).toEqual(
      new Set(['order-due', 'order-short', 'stock-low']),
    )
    await close()
  })

  it('has every bead, thread and finding of every design assigned, and no warning that stops a maker', async () => {
    const { ask, close } = await openSampleStudio()
    for (const { id, name, makeable } of (await ask('designs.list', {})).designs) {
      expect(makeable, name).not.toBeNull()
      const { body } = await ask('designs.read', { id })
      const { warnings } = await ask('engine.read', { body })
      expect(
        warnings.filter(({ severity }) => severity === 'impossible'),
        name,
      ).toEqual([])
    }
    await close()
  })

  it('has one open order that stock does not cover, and others that it does', async () => {
    const { ask, close } = await openSampleStudio()
    const { orders } = await ask('orders.coverAll', { today: TODAY })
    expect(orders.map(({ cover }) => cover.covered)).toEqual([true, true, true, false])
    expect(orders.at(-1)?.cover.costMinor).toBeGreaterThan(0)
    await close()
  })

  it('sells at the market on Saturdays, on whatever day it is begun', async () => {
    for (const today of ['2026-11-25', '2026-11-28', '2026-11-29', '2027-03-01']) {
      const studio = await openStudio()
      await studio.ask('workshop.begin', {
        ...{ with: 'sample', name: 'Saltmarsh', currency: 'EUR', decimalMark: '.', today },
      })
      const { pieces } = await studio.ask('pieces.list', { state: 'sold' })
      const days = pieces
        .filter(({ sale }) => sale?.channelName === 'Saturday market')
        .map(({ sale }) => isoWeekday(calendarDate(sale?.soldOn ?? '')))
      expect(new Set(days)).toEqual(new Set([6]))
      expect(pieces.every(({ sale }) => (sale?.soldOn ?? '') <= today)).toBe(true)
      await studio.close()
    }
  })

  it('gives every piece a code whose check letter fits, and no two the same', async () => {
    const { ask, close } = await openSampleStudio()
    const codes = (await ask('pieces.list', { state: 'all' })).pieces.map(({ code }) => code)
    expect(codes.filter((code) => !isPieceCode(code))).toEqual([])
    expect(new Set(codes).size).toBe(codes.length)
    await close()
  })
})
