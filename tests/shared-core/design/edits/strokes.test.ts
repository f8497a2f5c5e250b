import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chart } from '../../../../shared-core/chart/chart.ts'
import { paintCells } from '../../../../shared-core/chart/edits/paint-cells.ts'
import { sharedChart, sharedChartJson } from '../../../../shared-core/chart/shared-rows.ts'
import type { DesignBody, Panel, Strand } from '../../../../shared-core/design/design.ts'
import { applyEdits, type Stroke } from '../../../../shared-core/design/edits/body-edit.ts'
import { bodyStroke } from '../../../../shared-core/design/edits/body-stroke.ts'
import { chartStroke } from '../../../../shared-core/design/edits/chart-stroke.ts'
import { joinStrokes } from '../../../../shared-core/design/edits/join-strokes.ts'
import { anyChart } from '../../chart/any-chart.ts'
import { anyEdit, type NamedEdit } from '../../chart/edits/any-edit.ts'

const strand: Strand = {
  kind: 'strand',
  id: 'fringe',
  name: 'Fringe',
  shape: 'fringe',
  beads: '12A 1B',
  anchor: { panelId: 'panel', row: 1, bead: 1 },
  copies: 1,
}

function bodyOf(chart: Chart, route: Panel['route'] = {}): DesignBody {
  return {
    unitName: 'pair',
    palette: [],
    parts: [
      {
        kind: 'panel',
        id: 'panel',
        name: 'Panel',
        chart: sharedChartJson(chart),
        formId: 'cylinder-11/0',
        copies: 2,
        mirrored: false,
        route,
      },
      strand,
    ],
    extras: [],
    threadId: 'braided-6lb',
    needleSize: '12',
  }
}

function applied(body: DesignBody, edits: Stroke['redo']): DesignBody {
  const after = applyEdits(body, edits)
  if (!after.ok) throw new Error(after.error.message)
  return after.value
}

const stored = (stroke: Stroke): Stroke => JSON.parse(JSON.stringify(stroke)) as Stroke

/** A change of pieces: another order, names, settings, parts that come and go. */
const anyPieces: fc.Arbitrary<(body: DesignBody) => DesignBody> = fc.oneof(
  fc.string().map((unitName) => (body: DesignBody) => ({ ...body, unitName })),
  fc.nat(900).map((setUpS) => (body: DesignBody) => ({ ...body, setUpS })),
  fc.constant(({ setUpS: _, ...body }: DesignBody) => body),
  fc.constantFrom(1 as const, 2 as const).map((threadStrands) => (body: DesignBody) => ({
    ...body,
    threadStrands,
  })),
  fc.constant(({ threadStrands: _, ...body }: DesignBody) => body),
  fc.constant((body: DesignBody) => ({ ...body, parts: body.parts.toReversed() })),
  fc.nat(9).map((copies) => (body: DesignBody) => ({
    ...body,
    parts: body.parts.map((part) => ({ ...part, copies })),
  })),
  fc.constant((body: DesignBody) => ({
    ...body,
    parts: body.parts.filter(({ kind }) => kind === 'panel'),
  })),
  fc.string({ minLength: 1 }).map((id) => (body: DesignBody) => ({
    ...body,
    parts: [...body.parts.filter((part) => part.id !== id), { ...strand, id }],
  })),
)

describe('strokes of a drawing', () => {
  it('lead back to the body they came from, and forward again, also after they were stored', () => {
    fc.assert(
      fc.property(
        anyChart(),
        fc.array(fc.oneof(anyEdit, anyPieces), { minLength: 1, maxLength: 8 }),
        fc.option(fc.nat(8), { nil: undefined }),
        (chart, changes, startRow) => {
          const bodies = [bodyOf(chart, startRow === undefined ? {} : { startRow })]
          const strokes: Stroke[] = []
          for (const change of changes) {
            const body = bodies.at(-1) as DesignBody
            const stroke = strokeOf(body, change)
            strokes.push(stored(stroke))
            bodies.push(applied(body, stroke.redo))
          }
          let body = bodies.at(-1) as DesignBody
          for (const [at, { undo }] of [...strokes.entries()].toReversed()) {
            body = applied(body, undo)
            expect(body).toEqual(bodies[at])
          }
          for (const [at, { redo }] of strokes.entries()) {
            body = applied(body, redo)
            expect(JSON.stringify(body)).toBe(JSON.stringify(bodies[at + 1]))
          }
        },
      ),
    )
  })

  it('are one when joined: both are taken back, the later first, and both come again', () => {
    fc.assert(
      fc.property(anyChart(), fc.oneof(anyEdit, anyPieces), anyEdit, (chart, one, other) => {
        const before = bodyOf(chart)
        const first = strokeOf(before, one)
        const between = applied(before, first.redo)
        const second = strokeOf(between, other)
        const after = applied(between, second.redo)
        const joined = stored(joinStrokes('Paste', first, second))
        expect(joined.label).toBe('Paste')
        expect(applied(before, joined.redo)).toEqual(after)
        expect(applied(after, joined.undo)).toEqual(before)
      }),
    )
  })

  it('give the chart that the edit gave', () => {
    fc.assert(
      fc.property(anyChart(), anyEdit, (chart, { edit }) => {
        const { chart: edited } = edit(chart)
        const body = bodyOf(chart)
        const stroke = strokeOf(body, { name: '', edit })
        const after = applied(body, stored(stroke).redo)
        expect(panelOf(after).chart).toEqual(sharedChartJson(edited))
        expect(sharedChart(panelOf(after).chart)).toEqual(edited)
      }),
    )
  })

  it('are refused where they do not belong', () => {
    const body = bodyOf({ stitch: 'brick', rows: [] })
    const patch = { stitch: 'brick', splices: [{ row: 0, remove: 1, insert: [] }] } as const
    const shift = { row: 0, at: 0 }
    for (const partId of ['panel', 'fringe', 'gone']) {
      expect(
        applyEdits(body, [{ kind: 'chart', partId, patch: { ...patch, shift } }]),
      ).toMatchObject({ ok: false, error: { code: 'stroke-misfit' } })
    }
    expect(applyEdits(body, [{ kind: 'pieces', order: ['panel', 'gone'] }]).ok).toBe(false)
  })
})

describe('a stroke of a chart', () => {
  const chart: Chart = {
    stitch: 'square',
    rows: [
      { start: 0, cells: Uint16Array.of(1, 1, 1) },
      { start: 0, cells: Uint16Array.of(1, 2, 1) },
    ],
  }

  it('takes the start row and the strands along when rows and beads come before them', () => {
    const body = bodyOf(chart, { startRow: 1 })
    const cells = [
      { row: -1, at: 0 },
      { row: 1, at: -2 },
    ]
    const edit = paintCells(chart, cells, 0)
    const after = applied(
      body,
      chartStroke('Paint', body, { partId: 'panel', before: chart, edit }).redo,
    )
    expect(panelOf(after).route).toEqual({ startRow: 2 })
    expect(after.parts[1]).toMatchObject({ anchor: { row: 2, bead: 2 } })
  })

  it('lets a strand hang from the nearest bead left, or from nothing where its row is empty', () => {
    const body = bodyOf(chart)
    const nearest = paintCells(chart, [{ row: 1, at: 2 }], -1)
    const stroke = chartStroke('Take away', body, { partId: 'panel', before: chart, edit: nearest })
    expect(applied(body, stroke.redo).parts[1]).toMatchObject({ anchor: { row: 1, bead: 0 } })
    const all = [0, 2, 4].map((at) => ({ row: 1, at }))
    const gone = paintCells(chart, all, -1)
    const last = chartStroke('Take away', body, { partId: 'panel', before: chart, edit: gone })
    const after = applied(body, last.redo)
    expect(after.parts[1]).not.toHaveProperty('anchor')
    expect(applied(after, last.undo)).toEqual(body)
  })

  it('of another name or setting leaves the chart out of the store', () => {
    const body = bodyOf(chart)
    const renamed = { ...body, parts: [{ ...panelOf(body), name: 'Front' }, strand] }
    expect(JSON.stringify(bodyStroke('Rename', body, renamed))).not.toContain('cells')
  })
})

function panelOf(body: DesignBody): Panel {
  return body.parts.find((part): part is Panel => part.kind === 'panel') as Panel
}

type Change = NamedEdit

function strokeOf(body: DesignBody, change: Change | ((body: DesignBody) => DesignBody)): Stroke {
  if (typeof change === 'function') return bodyStroke('Change', body, change(body))
  const before = sharedChart(panelOf(body).chart)
  return chartStroke('Draw', body, { partId: 'panel', before, edit: change.edit(before) })
}
