import { describe, expect, it } from 'vitest'
import type { StitchKind } from '../../../shared-core/chart/chart.ts'
import type { RouteSettings } from '../../../shared-core/design/design.ts'
import { drawChart } from './draw-chart.ts'
import { lay } from './lay.ts'
import { routeText } from './route-text.ts'

function route(stitch: StitchKind, lines: readonly string[], settings: RouteSettings = {}) {
  const laid = lay(drawChart(stitch, lines), settings)
  expect(laid.replay.faults).toEqual([])
  expect(laid.warnings).toEqual([])
  return routeText(laid.events)
}

describe('a peyote route worked by hand', () => {
  it('strings two half rows and goes to and fro where the count is even', () => {
    expect(route('peyote', ['AAAA', 'AAAA', 'AAAA'])).toEqual([
      // Row 0 holds the first two half rows. Even columns lie higher, so the string must end over
      // column 0 for the next half row to begin above it: it is strung from the right.
      'row 0 right',
      '+3←2←1←0←',
      // Even columns of row 1: string bead 4, skip bead 0, through bead 1; 6, skip 2, through 3.
      'row 1 left',
      '+4→',
      '1→',
      '+6→',
      '3→',
      // Odd columns of row 1: the edge turn is plain, because bead 3 ended the row before.
      'row 1 right',
      '+7←',
      '6←',
      '+5←',
      '4←',
      'row 2 left',
      '+8→',
      '5→',
      '+10→',
      '7→',
      'row 2 right',
      '+11←',
      '10←',
      '+9←',
      '8←',
    ])
  })

  it('turns by a figure of eight at the odd edge, later round the edge thread it left', () => {
    const events = route('peyote', ['AAAAA', 'AAAAA', 'AAAAA'])
    expect(events.slice(0, 21)).toEqual([
      'row 0 left',
      '+0→1→2→3→4→',
      'row 1 right',
      '+9←',
      '3←',
      '+7←',
      '1←',
      // Bead 5 ends the half row with no standing bead beyond it.
      '+5←',
      // Through the bead behind it and on across bead 1, round by 7 and 2, back across bead 1:
      // the two ways cross in bead 1. Then bead 5 again from its outer end. Seven passes counted.
      '0→ step-up',
      '1→ step-up',
      '7→ step-up',
      '2← step-up',
      '1← step-up',
      '0← step-up',
      '5→ step-up',
      // Odd columns have a plain turn at the right.
      'row 1 left',
      '+6→',
      '7→',
      '+8→',
      '9→',
      'row 2 right',
    ])
    // At the next odd turn the thread from bead 0 to bead 5 lies at the edge and is hooked instead.
    expect(events.slice(21, 28)).toEqual([
      '+14←',
      '8←',
      '+12←',
      '6←',
      '+10←',
      '(0-5)←',
      '10→ step-up',
    ])
  })

  it('decreases by two columns at an edge by turning round the edge thread', () => {
    const events = route('peyote', ['AAAAAA', 'AAAAAA', '..AAAA'])
    expect(events.slice(events.indexOf('(0-6)←') - 2)).toEqual([
      '+7←',
      '6←',
      // The next half row begins two columns in: back through beads 6 and 7 to where it starts.
      '(0-6)←',
      '6→ weave',
      '7→ weave',
      'row 2 left',
      '+12→',
      '9→',
      '+14→',
      '11→',
      'row 2 right',
      '+15←',
      '14←',
      '+13←',
      '12←',
    ])
  })

  it('widens by one column at each edge with the thread in sight there, and says where', () => {
    const laid = lay(drawChart('peyote', ['..AA..', '.AAAA.', 'AAAAAA']))
    const events = routeText(laid.events)
    expect(laid.replay.faults).toEqual([])
    expect(events.slice(0, 11)).toEqual([
      // Two half rows strung together, from the right.
      'row 0 right',
      '+1←0←',
      'row 1 left',
      '+3→',
      '1→',
      // Bead 5 stands beyond the work: nothing lies under it to turn through, so the thread comes back
      // along its outer side.
      '+5→',
      'turn edge 5',
      'row 1 right',
      '+4←',
      '3←',
      '+2←',
    ])
    expect(laid.warnings).toMatchObject([{ code: 'thread-shows', severity: 'note', beads: [5] }])
  })
})

describe('a square stitch route worked by hand', () => {
  it('ties each bead to the one below it', () => {
    expect(route('square', ['AAA', 'AAA'])).toEqual([
      'row 0 left',
      '+0→1→2→',
      // String 5, back through 2 below it, forward through 5 again; so on to the edge.
      'row 1 right',
      '+5←',
      '2→',
      '5←',
      '+4←',
      '1→',
      '4←',
      '+3←',
      '0→',
      '3←',
    ])
  })

  it('passes the row below and the new row once more when it is reinforced', () => {
    const events = route('square', ['AAA', 'AAA'], { reinforce: true })
    expect(events.slice(-6)).toEqual([
      '0→ reinforce',
      '1→ reinforce',
      '2→ reinforce',
      '5← reinforce',
      '4← reinforce',
      '3← reinforce',
    ])
  })
})

describe('a loom route worked by hand', () => {
  it('hangs one warp more than columns and lays the weft twice through each row', () => {
    expect(route('loom', ['AAA', 'AAA'])).toEqual([
      'warp',
      'warp',
      'warp',
      'warp',
      'row 0 left',
      '+0→1→2→',
      'turn warp 2',
      '2←',
      '1←',
      '0←',
      'turn warp 0',
      'row 1 left',
      '+3→4→5→',
      'turn warp 5',
      '5←',
      '4←',
      '3←',
    ])
  })
})

describe('a ladder route worked by hand', () => {
  it('adds stack by stack and zigzags back when it is reinforced', () => {
    expect(route('ladder', ['AAA', 'AAA'], { reinforce: true })).toEqual([
      // Stacks of two: 0 over 3, 1 over 4, 2 over 5.
      'row 0 left',
      '+0↓3↓4↑1↑',
      '0↓',
      '3↓',
      '4↑',
      '1↑',
      '+2↓5↓',
      '4↑',
      '1↑',
      '2↓',
      '5↓',
      // Back in zigzag: the thread leaves the last stack below, so the one before is passed upwards.
      '4↑ reinforce',
      '1↑ reinforce',
      '0↓ reinforce',
      '3↓ reinforce',
    ])
  })
})

describe('a herringbone route worked by hand', () => {
  it('works pairs over a ladder and steps up through two beads at the edge', () => {
    expect(route('herringbone', ['AAAA', 'AAAA', 'AAAA'], { startRow: 0 })).toEqual([
      'row 0 left',
      '+0↑1↓',
      '0↑',
      '1↓',
      '+2↑',
      '1↓',
      '2↑',
      '+3↓',
      '2↑',
      '3↓',
      // The pair 7, 6: down through 7, back up through 6 and base bead 2; down through base bead 1.
      'row 1 right',
      '+7↓6↑',
      '2↑',
      '1↓',
      '+5↓4↑',
      '0↑',
      // Round the edge, then through the base bead and the new one: the step up.
      'turn edge 0',
      '0↓ step-up',
      '4↓ step-up',
      'row 2 left',
      '+8↓9↑',
      '5↑',
      '6↓',
      '+10↓11↑',
      '7↑',
    ])
  })
})

describe('a right-angle weave route worked by hand', () => {
  it('goes round two by two rings, alternating ways, sharing their sides', () => {
    const lines = ['.A.A', 'A.A.A', '.A.A', 'A.A.A', '.A.A']
    expect(route('right-angle-weave', lines)).toEqual([
      // Ring one, clockwise: top 0, right 3, bottom 5, left 2, closed through 0, on to 3.
      'row 1 left',
      '+0→3↓5←2↑',
      '0→',
      '3↓ step-up',
      // Ring two shares bead 3 and takes three more, the other way round; on to its lower bead 6.
      '+6→4↑1←',
      '3↓',
      '6→ step-up',
      // The next row of rings begins under ring two and shares bead 6.
      'row 3 right',
      '+9↓11←8↑',
      '6→',
      '9↓ step-up',
      '11← step-up',
      '8↑ step-up',
      // The last ring shares 8 at its side and 5 above: two beads are new.
      '5←',
      '+7↓10→',
      '8↑',
    ])
  })
})
