import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { writeScript } from '../../../shared-core/bench/write-script.ts'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import { type Chart, STITCH_KINDS } from '../../../shared-core/chart/chart.ts'
import { mirrorChart } from '../../../shared-core/chart/edits/mirror-chart.ts'
import { designOf, panelOf, read, strandOf } from '../design/a-design.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { randomCharts } from '../stitches/random-charts.ts'
import { lineText, script } from './written.ts'

const diamond = drawChart('brick', ['..A-A-', '.A-B-A-', 'A-B-B-A-', '.A-B-A-', '..A-A-'])

const rowsOf = (chart: Chart) =>
  script(designOf([panelOf(chart)])).pieces[0]?.stretches[0]?.lines ?? []

describe('a script', () => {
  it('reads a diamond row by row: side, beads in working order, bridges from the edge', () => {
    expect(rowsOf(diamond).map(lineText)).toEqual([
      'thread',
      'row 1 left 2A',
      'row 2 left 1A 1B 1A | 1 1',
      'row 3 right 1A 2B 1A | 1 2 2',
      'row 4 left 1A 1B 1A | 2 3',
      'row 5 right 2A | 2',
      'ends',
    ])
  })

  it('marks the rows whose first two are seated by a lock pass', () => {
    const locked = rowsOf(diamond).filter(({ steps }) => steps.some(({ hasLock }) => hasLock))
    expect(locked.map(({ rows }) => rows[0])).toEqual([4, 5])
  })

  it('begins with the length to cut and ends with the ends', () => {
    const lines = rowsOf(diamond)
    const [part] = read(designOf([panelOf(diamond)])).parts
    expect(lines[0]?.threadMm).toBe(part?.thread.cutMm[0])
    expect(lines.at(-1)?.kind).toBe('ends')
  })

  it('counts half rows in peyote and strings the first two together', () => {
    const lines = rowsOf(drawChart('peyote', ['ABAB', 'ABAB']))
    expect(lines.map(({ kind, rows }) => `${kind} ${rows.join('+')}`.trim())).toEqual([
      'thread',
      'row 1+2',
      'row 3',
      'row 4',
      'ends',
    ])
  })

  it('hangs the warps of a loom before its first row', () => {
    const lines = rowsOf(drawChart('loom', ['AAB', 'ABA']))
    expect(lines.map(({ kind }) => kind)).toEqual(['thread', 'warp', 'row', 'row', 'ends'])
    expect(lines[1]?.warps?.count).toBe(4)
    expect(lines[2]?.turns.roundEdge).toBe(true)
  })

  it('changes the thread in a line of its own, and goes on with the row it broke', () => {
    const chart: Chart = {
      stitch: 'brick',
      rows: Array.from({ length: 6 }, (_, row) => ({
        start: row % 2,
        cells: new Uint16Array(60).fill(1),
      })),
    }
    const body = designOf([panelOf(chart, { route: { workingLengthMm: 500 } })])
    const lines = script(body).pieces[0]?.stretches[0]?.lines ?? []
    const threads = lines.flatMap(({ threadMm }) => (threadMm === undefined ? [] : [threadMm]))
    expect(threads).toEqual(read(body).parts[0]?.thread.cutMm)
    lines.forEach((line, at) => {
      if (!line.isContinued) return
      expect(lines[at - 1]?.kind).toBe('thread')
      expect(lines[at - 2]?.rows).toEqual(line.rows)
    })
    expect(lines.some(({ isContinued }) => isContinued)).toBe(true)
  })

  it.each(STITCH_KINDS)('picks up every stitched bead once, in its own colour, in %s', (stitch) => {
    fc.assert(
      fc.property(randomCharts(stitch), fc.integer({ min: 300, max: 900 }), (chart, longest) => {
        const body = designOf([panelOf(chart, { route: { workingLengthMm: longest } })])
        const { slotOf } = indexBeads(chart)
        const steps =
          script(body).pieces[0]?.stretches[0]?.lines.flatMap((line) => line.steps) ?? []
        const picked = steps.flatMap(({ beads }) => beads)
        const worked = read(body).parts[0]?.events.flatMap((event) =>
          event.kind === 'pick-up' ? event.beads : [],
        )
        expect(picked).toEqual(worked)
        expect(new Set(picked).size).toBe(picked.length)
        for (const { beads, slots } of steps) {
          expect(slots).toEqual(beads.map((bead) => slotOf[bead]))
        }
      }),
      { numRuns: 40 },
    )
  })

  it.each(STITCH_KINDS)('holds every step of the bench in one line, in order, in %s', (stitch) => {
    fc.assert(
      fc.property(randomCharts(stitch), fc.integer({ min: 300, max: 900 }), (chart, longest) => {
        const body = designOf([panelOf(chart, { route: { workingLengthMm: longest } })])
        const stretch = script(body).pieces[0]?.stretches[0]
        const lines = stretch?.lines ?? []
        const told = lines.flatMap(({ steps }) => steps.map(({ text }) => text))
        expect(told).toEqual(read(body).parts[0]?.steps.map(({ text }) => text))
        let next = 0
        for (const { firstStep, steps } of lines) {
          expect(firstStep).toBe(next)
          next += steps.length
        }
        expect(stretch?.steps).toBe(next)
      }),
      { numRuns: 40 },
    )
  })
})

describe('a mirrored copy', () => {
  it('is worked from the other side, with the same bridges and beads', () => {
    const lopsided = drawChart('brick', ['..A-B-', '.A-B-C-', 'A-B-C-C-'])
    const { pieces } = script(designOf([panelOf(lopsided, { copies: 3, mirrored: true })]))
    expect(pieces.map(({ isMirrored }) => isMirrored)).toEqual([false, true, false])
    const [drawn, image] = pieces.map(({ stretches }) => stretches[0]?.lines.map(lineText))
    const swapped = drawn?.map((text) =>
      text.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left')),
    )
    expect(image).toEqual(swapped)
  })

  it('tells its steps as the reading of the mirrored chart does, where that begins at the other side', () => {
    const lopsided = drawChart('brick', ['..A-B-', '.A-B-C-', 'A-B-C-C-'])
    const image = mirrorChart(lopsided, 'left-right').chart
    const pair = designOf([panelOf(lopsided, { copies: 2, mirrored: true })])
    const begun = script(pair).pieces[0]?.stretches[0]?.lines.find(({ kind }) => kind === 'row')
    const other = begun?.side === 'left' ? 'right' : 'left'
    const startRow = (begun?.rows[0] ?? 1) - 1
    const alone = designOf([panelOf(image, { route: { startRow, startSide: other } })])
    const texts = (body: typeof pair, piece: number) =>
      script(body).pieces[piece]?.stretches[0]?.lines.flatMap(({ steps }) =>
        steps.map(({ text }) => text),
      )
    expect(texts(pair, 1)).toEqual(texts(alone, 0))
  })

  it('hangs its strands from the mirrored beads', () => {
    const left = strandOf('2B', { anchor: { panelId: 'panel', row: 2, bead: 0 } })
    const chart = drawChart('brick', ['..A-A-', '.A-B-A-', 'A-B-B-A-'])
    const { pieces } = script(designOf([panelOf(chart, { copies: 2, mirrored: true }), left]))
    const way = (piece: number) => pieces[piece]?.stretches[1]?.lines.map(lineText)
    expect(way(1)).toEqual(way(0))
    // Four beads in the row: the first from the left is the fourth in the mirror.
    const places = pieces.map(({ stretches }) => stretches[1]?.place)
    expect(places).toEqual(['row 3, bead 1 of the panel', 'row 3, bead 4 of the panel'])
    const told = pieces.map(({ stretches }) =>
      stretches[1]?.lines.flatMap(({ steps }) => steps.map(({ text }) => text)).join('; '),
    )
    expect(told[0]).toContain('up through row 3, bead 1 of the panel')
    expect(told[1]).toContain('up through row 3, bead 4 of the panel')
  })

  it('counts the beads of a half row of peyote from its own left', () => {
    const chart = drawChart('peyote', ['AAAAA', 'AAAAA'])
    // The fourth column lies in the second half row, its second bead of two; the first column in the first, of three.
    const hung = (bead: number) =>
      strandOf('2B', { id: `strand${bead}`, anchor: { panelId: 'panel', row: 1, bead } })
    const panel = panelOf(chart, { copies: 2, mirrored: true })
    const { pieces } = script(designOf([panel, hung(3), hung(0)]))
    const places = pieces.map(({ stretches }) => stretches.map(({ place }) => place))
    expect(places).toEqual([
      [undefined, 'row 4, bead 2 of the panel', 'row 3, bead 1 of the panel'],
      [undefined, 'row 4, bead 1 of the panel', 'row 3, bead 3 of the panel'],
    ])
  })
})

describe('strands', () => {
  it('stand after their panel, every copy of them', () => {
    const fringe = strandOf('3B 1C', {
      id: 'fringe',
      name: 'Fringe',
      anchor: { panelId: 'panel', row: 4, bead: 0 },
      copies: 2,
    })
    const { pieces } = script(designOf([panelOf(diamond, { copies: 2 }), fringe]))
    expect(pieces).toHaveLength(2)
    expect(pieces[0]?.stretches.map(({ name, copy }) => `${name} ${copy}`)).toEqual([
      'Panel 0',
      'Fringe 0',
      'Fringe 1',
    ])
    const [first] = pieces[0]?.stretches[1]?.lines ?? []
    expect(first && lineText(first)).toBe('strand 3B 1C')
    expect(first?.turns.roundBead).toBe(true)
  })

  it('that hang from nothing are pieces of their own, a piece a copy', () => {
    const { pieces } = script(designOf([strandOf('6A', { shape: 'loop', copies: 2 })]))
    expect(pieces.map(({ name, copy }) => `${name} ${copy}`)).toEqual(['Strand 0', 'Strand 1'])
  })

  it('have all their beads in the script', () => {
    const reeds = [0, 1].map((bead) =>
      strandOf('5B 2C', { id: `reed${bead}`, anchor: { panelId: 'panel', row: 4, bead } }),
    )
    const body = designOf([panelOf(diamond), ...reeds])
    const beads = script(body).pieces.flatMap(({ stretches }) =>
      stretches.flatMap(({ lines }) =>
        lines.flatMap(({ steps }) => steps.flatMap((step) => step.beads)),
      ),
    )
    expect(beads).toHaveLength(read(body).beads)
  })
})

describe('holes', () => {
  it('are told at the pass that fills them and at the first that sticks, as often as the reading finds them', () => {
    const chart = drawChart('brick', ['A-A-A-A-', '.A-A-A-', '..A-A-'])
    const formId = referenceTables.forms.find(({ id }) => id.includes('15/0'))?.id ?? ''
    const [thread] = referenceTables.threads.toSorted(
      (a, b) => b.diameterMm.value - a.diameterMm.value,
    )
    const plain = designOf([panelOf(chart, { formId })], { threadId: thread?.id ?? '' })
    const thick = { ...plain, palette: plain.palette.map((slot) => ({ ...slot, formId })) }
    const [part] = read(thick).parts
    const notes = script(thick).pieces[0]?.stretches[0]?.lines.flatMap(({ holes }) => holes) ?? []
    const sticking = notes.filter(({ kind }) => kind === 'sticks').map(({ bead }) => bead)
    const over = [...(part?.passes ?? [])].flatMap((passes, bead) =>
      passes > (part?.holds[bead] ?? 0) ? [bead] : [],
    )
    expect(over.length).toBeGreaterThan(0)
    expect(sticking.toSorted((a, b) => a - b)).toEqual(over)
  })

  it('name a step of the line they stand in', () => {
    for (const line of rowsOf(diamond)) {
      for (const { step } of line.holes) {
        expect(step).toBeGreaterThanOrEqual(line.firstStep)
        expect(step).toBeLessThan(line.firstStep + line.steps.length)
      }
    }
  })
})

it('refuses what a reading refuses', () => {
  const written = writeScript(designOf([], { threadId: 'no-such' }), referenceTables)
  expect(written.ok ? '' : written.error.code).toBe('unknown-thread')
})
