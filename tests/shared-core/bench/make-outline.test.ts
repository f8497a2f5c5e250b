import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sampleDesigns } from '../../../electron/service/sample/designs.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { handAt, makeOutline } from '../../../shared-core/bench/make-outline.ts'
import { lineOf, placeOf, readerMap } from '../../../shared-core/bench/reader-place.ts'
import { writeScript } from '../../../shared-core/bench/write-script.ts'
import { STITCH_KINDS } from '../../../shared-core/chart/chart.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { designOf, panelOf, strandOf } from '../design/a-design.ts'
import { randomCharts } from '../stitches/random-charts.ts'

function both(body: DesignBody) {
  const [read, script] = [readDesign(body, referenceTables), writeScript(body, referenceTables)]
  if (!read.ok || !script.ok) throw new Error('expected a design that can be read')
  return { outline: makeOutline(body, read.value), map: readerMap(script.value, 2) }
}

/** Asks reader and outline at every step of two units. */
function expectSame(body: DesignBody): void {
  const { outline, map } = both(body)
  for (let at = 0; at < map.steps; at += 1) {
    const place = placeOf(map, at)
    const placed = lineOf(map, at)
    const hand = handAt(outline, place)
    if (placed === undefined || hand === undefined) throw new Error(`nothing at step ${at}`)
    const { piece, stretch } = placed
    expect([hand.piece, hand.copy, hand.copies, hand.isMirrored]).toEqual([
      ...[piece.name, piece.copy + 1, piece.copies, piece.isMirrored],
    ])
    if (stretch.kind === 'strand') {
      expect(hand.at).toEqual({
        ...{ kind: 'strand', name: stretch.name },
        ...{ number: stretch.copy + 1, of: stretch.copies },
      })
    } else {
      expect(hand.at).toMatchObject({ kind: 'row', of: placed.rows })
      if (placed.rowAt > 0) expect(hand.at).toMatchObject({ rows: placed.line.rows })
    }
  }
}

describe('the outline of a make', () => {
  it('says of every step of the sample what the reader says of it', () => {
    for (const { body } of sampleDesigns) expectSame(body)
  })

  it('says so of any chart in every stitch, in a mirrored pair with a fringe', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...STITCH_KINDS).chain((stitch) => randomCharts(stitch)),
        (chart) => {
          const panel = panelOf(chart, { copies: 2, mirrored: true })
          const anchor = { panelId: 'panel', row: chart.rows.length - 1, bead: 0 }
          expectSame(designOf([panel, strandOf('5A', { copies: 2, anchor })]))
        },
      ),
      { numRuns: 60 },
    )
  })

  it('counts a row that goes on with a new thread as one row', () => {
    const cells = new Uint16Array(60).fill(1)
    const rows = Array.from({ length: 12 }, () => ({ start: 0, cells }))
    const body = designOf([panelOf({ stitch: 'square', rows })])
    const lines = both(body).map.lines
    expect(lines.some(({ line }) => line.isContinued)).toBe(true)
    expect(new Set(lines.map(({ rows: all }) => all))).toEqual(new Set([12]))
    expectSame(body)
  })

  it('knows a strand that hangs from nothing as a piece of its own', () => {
    expectSame(designOf([strandOf('12A 1B', { copies: 3 })]))
  })
})
