import { describe, expect, it } from 'vitest'
import { designOf, panelOf, read, strandOf } from '../design/a-design.ts'
import { drawChart } from './draw-chart.ts'
import { routeText } from './route-text.ts'

// Two rows of two beads in brick: 0 and 1 above, 2 and 3 half a bead to the right below them. A fringe
// hangs from bead 3, a loop with an ear wire from bead 0. One thread does it all.
const panel = panelOf(drawChart('brick', ['A-A-', '.A-A-']), {
  route: { startRow: 0, startSide: 'left', loopPasses: 2 },
})
const fringe = strandOf('2A 1B', { id: 'fringe', anchor: { panelId: 'panel', row: 1, bead: 1 } })
const loop = strandOf('4A', {
  id: 'loop',
  shape: 'loop',
  findingId: 'wire',
  anchor: { panelId: 'panel', row: 0, bead: 0 },
})
const { parts } = read(designOf([panel, fringe, loop]))
const eventsOf = (at: number) => routeText(parts[at]?.events ?? [])

describe('a panel with a fringe and a loop worked by hand', () => {
  it('is stitched first, its start tail woven in, its thread left for what hangs from it', () => {
    expect(eventsOf(0)).toEqual([
      'add-thread',
      // Two beads side by side; the thread leaves bead 0 below.
      'row 0 left',
      '+0↓1↑',
      '0↓',
      // Bead 2 sits half a bead in: the one bridge there is, and a lock. Bead 3 overhangs the far end.
      'row 1 left',
      '+2↓3↑',
      '(0-1)↓',
      '3↓',
      '2↑ lock',
      '3↓ lock',
      // The working thread stays below bead 3. The start tail leaves bead 0 above and goes on through
      // six beads, each time the neighbour with the fewest passes, a half hitch after two and four.
      'tail 0↑',
      '1↓ finish',
      '2↓ finish',
      'knot 2',
      '3↑ finish',
      '1↑ finish',
      'knot 1',
      '0↓ finish',
      '1↑ finish',
      'cut',
    ])
  })

  it('has a fringe that goes down, round its turn bead, and back up through the bead it hangs from', () => {
    expect(eventsOf(1)).toEqual([
      // The thread is below bead 3 already, so nothing is woven first.
      '+0↓1↓2↓',
      // Bead 2 turns the thread and is passed once; the others are passed again on the way up.
      'turn bead 2',
      '1↑',
      '0↑',
      'join panel 3↑',
    ])
    expect([...(parts[1]?.passes ?? [])]).toEqual([2, 2, 1])
  })

  it('has a loop that carries its finding at the middle, goes round twice, and ends the thread', () => {
    expect(eventsOf(2)).toEqual([
      // From above bead 3 into bead 1, over to bead 0, and round the bridge below to leave it above.
      'join panel 1↑ weave',
      'join panel 0↓ weave',
      'join panel 0↑ weave',
      // Out through two beads, the ear wire, back through two, into the bead beside.
      '+0↓1↓',
      'finding wire',
      '+2↑3↑',
      'join panel 1↓',
      // The second round: up bead 0 again, the same way, through the wire once more.
      'join panel 0↑ reinforce',
      '0↓ reinforce',
      '1↓ reinforce',
      'finding wire',
      '2↑ reinforce',
      '3↑ reinforce',
      'join panel 1↓',
      // The end goes through six beads; of these four, 2 and 3 have the most room.
      'join panel 2↓ finish',
      'join panel 3↑ finish',
      'join panel 2↓ finish',
      'join panel 3↑ finish',
      'join panel 2↓ finish',
      'join panel 3↑ finish',
      'cut',
    ])
  })

  it('tells the finding in the steps, each time the thread goes through it', () => {
    const told = (parts[2]?.steps ?? []).map(({ text }) => text).join('; ')
    expect(told.match(/through the finding/g)).toHaveLength(2)
  })

  it('needs one length of thread, cut with the panel', () => {
    expect(parts.map(({ thread }) => thread.cutMm.length)).toEqual([1, 0, 0])
  })
})
