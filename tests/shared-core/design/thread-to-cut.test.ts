import { describe, expect, it } from 'vitest'
import { lay } from '../stitches/lay.ts'
import { designOf, panelOf, read } from './a-design.ts'
import { block, diamond } from './small-charts.ts'

describe('thread to cut', () => {
  it('is one length with both tails for a small piece', () => {
    const [part] = read(
      designOf([panelOf(diamond, { route: { startTailMm: 200, endTailMm: 300 } })]),
    ).parts
    const woven = lay(diamond).threadMm * 1.03
    expect(part?.thread.cutMm).toEqual([Math.ceil((woven + 500) / 10) * 10])
  })

  it('is as few lengths as the working length allows, none much longer, and adds up', () => {
    for (const workingLengthMm of [800, 1200, 1600, 2400]) {
      const chart = block('brick', 30, 30)
      const [part] = read(designOf([panelOf(chart, { route: { workingLengthMm } })])).parts
      const cut = part?.thread.cutMm ?? []
      expect(Math.max(...cut)).toBeLessThanOrEqual(workingLengthMm + 10)
      const woven = lay(chart).threadMm * 1.03
      const least = Math.ceil((woven - 2 * (workingLengthMm - 270)) / (workingLengthMm - 240)) + 2
      expect(cut.length).toBeGreaterThanOrEqual(least)
      expect(cut.length).toBeLessThanOrEqual(Math.ceil(1.25 * least))
      const added = part?.events.flatMap((event) =>
        event.kind === 'add-thread' ? [event.lengthMm] : [],
      )
      expect(added).toEqual(cut)
      expect(part?.thread.spoolMm.value).toBe(cut.reduce((sum, mm) => sum + mm, 0))
    }
  })

  it('weighs what stays in the piece against what is cut off: together they are the lengths', () => {
    const [part] = read(designOf([panelOf(block('brick', 20, 20))])).parts
    const cutOff = (part?.events ?? []).reduce(
      (sum, event) => sum + (event.kind === 'cut' ? event.tailMm : 0),
      0,
    )
    const { inPieceMm, cutMm, spoolMm } = part?.thread ?? read(designOf([])).thread
    const heads = (cutMm.length - 1) * 120
    const left = spoolMm.value - inPieceMm.value - cutOff
    // What remains is the head of each joined length beyond what is woven in, and rounding up.
    expect(left).toBeGreaterThanOrEqual(-1)
    expect(left).toBeLessThanOrEqual(heads + 10 * cutMm.length)
  })

  it('hangs warps on a loom: columns and one more, each longer than the work by 300 mm', () => {
    const chart = block('loom', 10, 6)
    const [part] = read(designOf([panelOf(chart)])).parts
    const warps = part?.events.filter(({ kind }) => kind === 'warp') ?? []
    expect(warps).toHaveLength(7)
    // 16 mm of work, and six beads of 1.3 and 1.6 mm at either end.
    expect(warps[0]).toEqual({ kind: 'warp', lengthMm: 316, inPieceMm: 51 })
    expect(part?.thread.cutMm.filter((mm) => mm === 316)).toHaveLength(7)
  })
})
