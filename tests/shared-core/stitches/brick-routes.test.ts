import { describe, expect, it } from 'vitest'
import type { RouteSettings } from '../../../shared-core/design/design.ts'
import { drawChart } from './draw-chart.ts'
import { lay } from './lay.ts'
import { routeText } from './route-text.ts'

// Charts are drawn half bead by half bead: `A-` is a bead, `.` half a bead of nothing. Beads are
// numbered row by row from the top, left to right. `+0↓1↑` strings bead 0 downwards and bead 1
// upwards, `0↑` passes bead 0 upwards, `(0-1)↓` goes under the bridge below beads 0 and 1.
function brickRoute(lines: readonly string[], settings: RouteSettings = {}) {
  const laid = lay(drawChart('brick', lines), settings)
  expect(laid.replay.faults).toEqual([])
  return { events: routeText(laid.events), warnings: laid.warnings.map(({ code }) => code) }
}

describe('a brick route worked by hand', () => {
  it('starts with two beads side by side and grows by half a bead at both ends', () => {
    const { events } = brickRoute(['.A-A-', 'A-A-A-'])
    expect(events).toEqual([
      // Two beads strung, the first passed again: they sit side by side, bridged above and below,
      // and the thread leaves bead 0 below, where row 1 grows.
      'row 0 left',
      '+0↓1↑',
      '0↓',
      // Bead 2 overhangs by half, so the bridge is the first from the edge, under bead 3.
      'row 1 left',
      '+2↓3↑',
      '(0-1)↓',
      '3↓',
      // Bead 4 overhangs at the far end: one more on the last bridge. No lock: the row grows.
      '+4↑',
      '(0-1)↓',
      '4↓',
    ])
  })

  it('starts with a ladder and shrinks at both ends, locking each row', () => {
    const { events } = brickRoute(['..A-A-', '.A-A-A-', 'A-A-A-A-'], { startRow: 2 })
    expect(events).toEqual([
      // Four beads: the first is strung downwards so that the last is left above.
      'row 2 left',
      '+5↓6↑',
      '5↓',
      '6↑',
      '+7↓',
      '6↑',
      '7↓',
      '+8↑',
      '7↓',
      '8↑',
      // Row 1 begins where the ladder ended. Bead 4 sits half a bead in: second bridge (6-7), lock.
      'row 1 right',
      '+4↑3↓',
      '(6-7)↑',
      '3↑',
      '4↓ lock',
      '3↑ lock',
      '+2↓',
      '(5-6)↑',
      '2↑',
      'row 0 left',
      '+0↑1↓',
      '(3-4)↑',
      '1↑',
      '0↓ lock',
      '1↑ lock',
    ])
  })

  it('grows at one end and shrinks at the other in a straight strip, with no lock where it grows', () => {
    const { events } = brickRoute(['A-A-A-', '.A-A-A-', 'A-A-A-'], { startRow: 2 })
    expect(events).toEqual([
      'row 2 left',
      '+6↑7↓',
      '6↑',
      '7↓',
      '+8↑',
      '7↓',
      '8↑',
      // Bead 5 overhangs the right edge: first bridge. Bead 3 stays half a bead in at the far end.
      'row 1 right',
      '+5↑4↓',
      '(7-8)↑',
      '4↑',
      '+3↓',
      '(6-7)↑',
      '3↑',
      'row 0 left',
      '+0↑1↓',
      '(3-4)↑',
      '1↑',
      '+2↓',
      '(4-5)↑',
      '2↑',
    ])
  })

  it('locks the first two beads of every row when the maker wants it', () => {
    const { events } = brickRoute(['.A-A-', 'A-A-A-'], { lockEveryRow: true })
    expect(events.slice(4, 8)).toEqual(['+2↓3↑', '(0-1)↓', '3↓', '2↑ lock'])
  })

  it('finishes one lobe, weaves back through beads to the other and goes on', () => {
    const { events } = brickRoute(['A-A-..A-A-', '.A-A-A-A-'], { startRow: 1 })
    expect(events).toEqual([
      'row 1 left',
      '+4↓5↑',
      '4↓',
      '5↑',
      '+6↓',
      '5↑',
      '6↓',
      '+7↑',
      '6↓',
      '7↑',
      // The thread leaves bead 7, so the right lobe comes first; bead 2 sits half a bead in: lock.
      'row 0 left',
      '+2↑3↓',
      '(6-7)↑',
      '3↑',
      '2↓ lock',
      '3↑ lock',
      // Back through the lobe's other bead and the ladder, out of bead 5 at the second lobe's edge.
      '2↓ weave',
      '6↓ weave',
      '5↑ weave',
      'row 0 right',
      '+1↑0↓',
      '(4-5)↑',
      '0↑',
      '1↓ lock',
      '0↑ lock',
    ])
  })

  it('weaves round a bead whose hole is full, and through it where nothing leads round', () => {
    // Beads 0 1 | 2 3 over 4 to 7 over 8 to 12; the left lobe is done, the thread leaves bead 1 or 0.
    const chart = drawChart('brick', ['A-A-..A-A-', '.A-A-A-A-', 'A-A-A-A-A-'])
    const weaves = (full: readonly number[]) =>
      routeText(
        lay(chart, { startRow: 2 }, (bead) => (full.includes(bead) ? 2 : 12)).events,
      ).filter((text) => text.endsWith('weave'))
    // Down under the lobe and up again beside it.
    expect(weaves([])).toEqual(['1↓ weave', '5↓ weave', '6↑ weave'])
    // Bead 5 is full: down at the lobe's other side, a row deeper, and up under the same bead.
    expect(weaves([5])).toEqual(['0↓ weave', '4↓ weave', '9↓ weave', '10↑ weave', '6↑ weave'])
    // Every hole is full: through as few as can be, the thread in sight beside bead 1.
    const all = Array.from({ length: 13 }, (_, bead) => bead)
    expect(weaves(all)).toEqual(['5↓ weave', '6↑ weave'])
  })

  it('works both sides of a hole and joins them by the row above it', () => {
    const { events } = brickRoute(['.A-A-A-A-', 'A-A-..A-A-', '.A-A-A-A-'], { startRow: 2 })
    expect(events.slice(10)).toEqual([
      'row 1 left',
      '+6↑7↓',
      '(10-11)↑',
      '7↑',
      '6↓ lock',
      '7↑ lock',
      '6↓ weave',
      '10↓ weave',
      '9↑ weave',
      'row 1 right',
      '+5↑4↓',
      '(8-9)↑',
      '4↑',
      '5↓ lock',
      '4↑ lock',
      // The joining row: bead 1 hangs a second time on the left side's last bridge, bead 2 on the
      // right side's first, and the thread that runs between them closes the hole.
      'row 0 left',
      '+0↑1↓',
      '(4-5)↑',
      '1↑',
      '0↓ lock',
      '1↑ lock',
      '+2↓',
      '(6-7)↑',
      '2↑',
      '+3↓',
      '(6-7)↑',
      '3↑',
    ])
  })

  it('bridges a wide gap between two parts by laddering what has nothing under it', () => {
    const { events } = brickRoute(['A-A-A-A-A-A-', '.A-A-....A-A-', 'A-A-A-A-A-A-A-'], {
      startRow: 2,
    })
    expect(events.slice(events.indexOf('row 0 left'))).toEqual([
      'row 0 left',
      '+0↑1↓',
      '(6-7)↑',
      '1↑',
      '+2↓',
      '(6-7)↑',
      '2↑',
      // Bead 3 lies over the gap: laddered onto bead 2, which leaves the thread at its foot.
      '+3↓',
      '2↑',
      '3↓',
      // Bead 4 is the first over the other part: hung from the foot, then laddered to bead 3.
      '(8-9)↑',
      '+4↑',
      '3↓',
      '4↑',
      '+5↓',
      '(8-9)↑',
      '5↑',
    ])
  })

  it('ladders what overhangs by more than half a bead, before the start and after the end', () => {
    const { events } = brickRoute(['....A-A-', '.A-A-A-A-A-A-A-'], { startRow: 0 })
    expect(events).toEqual([
      'row 0 left',
      '+0↓1↑',
      '0↓',
      // The first bead with something under it is 3; bead 2 is laddered outwards onto it, then the
      // thread comes back through both to bead 4, which seats them as a lock does.
      'row 1 left',
      '+3↓4↑',
      '(0-1)↓',
      '4↓',
      '3↑ lock',
      '+2↓',
      '3↑',
      '2↓',
      '3↑ weave',
      '4↓ weave',
      '+5↑',
      '(0-1)↓',
      '5↓',
      // Beads 6 to 8 have nothing under them: each is laddered onto the one before.
      '+6↑',
      '5↓',
      '6↑',
      '+7↓',
      '6↑',
      '7↓',
      '+8↑',
      '7↓',
      '8↑',
    ])
  })

  it('lays a single tip across the last two beads and adds the other tip by the tail', () => {
    const { events } = brickRoute(['.A-', 'A-A-', '.A-'])
    expect(events).toEqual([
      'row 1 left',
      '+1↑2↓',
      '1↑',
      'row 0 left',
      '+0→',
      '2↓',
      // The start tail leaves bead 1 below: it runs through bead 3, which lies across, and up bead 2.
      'row 2 left',
      'tail 1↓',
      '+3→',
      '2↑',
    ])
  })

  it('hangs a row from a single bead by going down round its bridge, and says the place is weak', () => {
    const { events, warnings } = brickRoute(['A-A-', '.A-', 'A-A-'])
    expect(warnings).toEqual(['single-bead-neck'])
    expect(events).toEqual([
      'row 0 left',
      '+0↓1↑',
      '0↓',
      // One bead alone, with more below it: strung, under the bridge, back through.
      'row 1 left',
      '+2↑',
      '(0-1)↓',
      '2↓',
      // Bead 2 has no bridge: both beads strung, back through bead 2, round the bridge it hangs on.
      'row 2 left',
      '+3↓4↑',
      '2↑',
      '(0-1)↓',
      '2↓',
      '4↓',
    ])
  })

  it('begins a diamond at a tip, because that needs no weaving', () => {
    const { events } = brickRoute(['..A-A-', '.A-A-A-', 'A-A-A-A-', '.A-A-A-', '..A-A-'])
    expect(events.filter((event) => event.startsWith('row'))).toEqual([
      'row 0 left',
      'row 1 left',
      'row 2 right',
      'row 3 left',
      'row 4 right',
    ])
    expect(events.filter((event) => event.endsWith('weave'))).toEqual([])
  })
})
