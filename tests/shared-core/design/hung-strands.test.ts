import { describe, expect, it } from 'vitest'
import { routeText } from '../stitches/route-text.ts'
import { designOf, panelOf, read, strandOf } from './a-design.ts'
import { block, diamond } from './small-charts.ts'

describe('strands', () => {
  const anchor = { panelId: 'panel', row: 4, bead: 0 }

  it('go down a fringe, round its turn bead and back up into the panel', () => {
    const fringe = strandOf('3A 1B', { anchor })
    const reading = read(designOf([panelOf(diamond), fringe]))
    const events = routeText(reading.parts[1]?.events ?? [])
    const from = events.findIndex((event) => event.startsWith('+'))
    expect(events.slice(from, from + 6)).toEqual([
      '+0↓1↓2↓3↓',
      'turn bead 3',
      // The turn bead lies across below the others and is passed once.
      '2↑',
      '1↑',
      '0↑',
      'join panel 12↑',
    ])
    // The last row ended at bead 12 with the thread below it: it is there already.
    expect(from).toBe(0)
    expect(Array.from(reading.parts[1]?.passes ?? [])).toEqual([2, 2, 2, 1])
  })

  it('carry a finding at the middle of a loop and go round as often as asked', () => {
    const loop = strandOf('4A', { shape: 'loop', findingId: 'wire', anchor: { ...anchor, row: 0 } })
    const panel = panelOf(diamond, { route: { loopPasses: 2 } })
    const reading = read(designOf([panel, loop]))
    const events = routeText(reading.parts[1]?.events ?? [])
    const from = events.findIndex((event) => event.startsWith('+'))
    // The work ended below: the thread weaves up through the panel to the bead the loop hangs from.
    expect(events[from - 1]).toBe('join panel 0↑ weave')
    expect(events.slice(from, from + 11)).toEqual([
      '+0↓1↓',
      'finding wire',
      '+2↑3↑',
      // Back into the panel through the bead beside the one it left.
      'join panel 1↓',
      // Round once more: up the first bead again, through the loop, and in.
      'join panel 0↑ reinforce',
      '0↓ reinforce',
      '1↓ reinforce',
      'finding wire',
      '2↑ reinforce',
      '3↑ reinforce',
      'join panel 1↓',
    ])
    expect(Array.from(reading.parts[1]?.passes ?? [])).toEqual([2, 2, 2, 2])
  })

  it('add their passes to the panel they hang from', () => {
    const without = read(designOf([panelOf(diamond)])).parts[0]?.passes ?? []
    const hung =
      read(designOf([panelOf(diamond), strandOf('5A', { anchor })])).parts[0]?.passes ?? []
    expect(hung[12] ?? 0).toBeGreaterThanOrEqual((without[12] ?? 0) + 1)
  })

  it('share the panel’s thread: no tails of their own', () => {
    const fringe = strandOf('5A', { anchor })
    const alone = read(designOf([panelOf(diamond)])).thread.cutMm
    const hung = read(designOf([panelOf(diamond), fringe])).thread.cutMm
    expect(hung).toHaveLength(1)
    expect((hung[0] ?? 0) - (alone[0] ?? 0)).toBeLessThan(60)
  })

  it('take new lengths when the thread does not reach, each within the working length', () => {
    const panel = panelOf(block('brick', 12, 30), { route: { workingLengthMm: 900 } })
    const hung = { panelId: 'panel', row: 11, bead: 0 }
    const fringe = strandOf('40A 1B', { anchor: hung, copies: 30 })
    const { thread, parts } = read(designOf([panel, fringe]))
    const bare = read(designOf([panel])).thread.cutMm
    expect(thread.cutMm.length).toBeGreaterThan(bare.length)
    expect(Math.max(...thread.cutMm)).toBeLessThanOrEqual(910)
    expect(parts[1]?.thread.cutMm.length).toBeGreaterThan(0)
    // All that stays in the piece comes off the spool, and no more than a quarter goes to ends.
    expect(thread.spoolMm.value).toBeGreaterThan(thread.inPieceMm.value)
    expect(thread.inPieceMm.value / thread.spoolMm.value).toBeGreaterThan(0.6)
  })

  it('are counted once for every copy of the panel', () => {
    const parts = [panelOf(diamond, { copies: 2 }), strandOf('5A', { anchor, copies: 2 })]
    expect(read(designOf(parts)).beads).toBe(2 * 14 + 2 * 2 * 5)
  })

  it('hang on their own thread where their anchor is not there, and say so', () => {
    const lost = strandOf('5A', { anchor: { panelId: 'panel', row: 40, bead: 0 } })
    const reading = read(designOf([panelOf(diamond), lost]))
    expect(reading.warnings.map(({ code }) => code)).toContain('anchor-missing')
    expect(reading.parts[1]?.thread.cutMm).toHaveLength(1)
  })

  it('lengthen the piece as it hangs', () => {
    const bare = read(designOf([panelOf(diamond)])).heightMm.value
    const hung = read(designOf([panelOf(diamond), strandOf('10A', { anchor })])).heightMm.value
    expect(hung).toBeGreaterThan(bare + 10)
  })
})
