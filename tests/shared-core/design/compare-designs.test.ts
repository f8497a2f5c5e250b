import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { compareDesigns } from '../../../shared-core/design/compare-designs.ts'
import type { DesignBody, Panel, Strand } from '../../../shared-core/design/design.ts'

const panel: Panel = {
  kind: 'panel',
  id: 'panel',
  name: 'Triangle',
  chart: {
    stitch: 'brick',
    rows: [
      { start: 0, cells: '1A 2B 1A' },
      { start: 1, cells: '3A' },
      { start: 2, cells: '2B' },
    ],
  },
  formId: 'cylinder-11/0',
  copies: 2,
  mirrored: false,
  route: {},
}
const loop: Strand = {
  kind: 'strand',
  id: 'loop',
  name: 'Ear loop',
  shape: 'loop',
  beads: '6A',
  findingId: 'wire',
  anchor: { panelId: 'panel', row: 0, bead: 1 },
  copies: 1,
}
const slot = { formId: 'cylinder-11/0', colourHex: '#4b5a63', finish: 'matte' } as const
const body: DesignBody = {
  unitName: 'pair',
  palette: [
    { label: 'A', name: 'slate', ...slot },
    { label: 'B', name: 'brine', ...slot },
  ],
  parts: [panel, loop],
  extras: [{ id: 'wire', kind: 'finding', name: 'Ear wire', count: 2 }],
  threadId: 'braided-6lb',
  needleSize: '12',
}

/** Changes of the design above, each with the differences it must show. */
const turns: readonly (readonly [string, DesignBody, readonly object[]])[] = [
  [
    'thread, needle and minutes',
    { ...body, threadId: 'braided-10lb', threadStrands: 2, needleSize: '10', setUpS: 600 },
    [
      { kind: 'body', field: 'threadId', from: 'braided-6lb', to: 'braided-10lb' },
      { kind: 'body', field: 'threadStrands', from: undefined, to: 2 },
      { kind: 'body', field: 'needleSize', from: '12', to: '10' },
      { kind: 'body', field: 'setUpS', from: undefined, to: 600 },
    ],
  ],
  [
    'a slot',
    { ...body, palette: body.palette.slice(0, 1).map((one) => ({ ...one, finish: 'gloss' })) },
    [
      { kind: 'slot', label: 'A', field: 'finish', from: 'matte', to: 'gloss' },
      { kind: 'slot-removed', label: 'B', name: 'brine' },
    ],
  ],
  [
    'a strand’s beads and where it hangs',
    {
      ...body,
      parts: [panel, { ...loop, beads: '8A', anchor: { panelId: 'panel', row: 0, bead: 2 } }],
    },
    [
      { kind: 'part', partId: 'loop', field: 'beads', from: '6A', to: '8A' },
      { kind: 'part', partId: 'loop', field: 'anchor', from: 'panel 0/1', to: 'panel 0/2' },
    ],
  ],
  ['a strand taken off', { ...body, parts: [panel] }, [{ kind: 'part-removed', partId: 'loop' }]],
  ['the order of parts', { ...body, parts: [loop, panel] }, [{ kind: 'parts-moved' }]],
  [
    'how a panel is worked and how often it is there',
    {
      ...body,
      parts: [{ ...panel, mirrored: true, route: { startRow: 1, lockEveryRow: true } }, loop],
    },
    [
      { kind: 'part', field: 'mirrored', from: false, to: true },
      { kind: 'route', setting: 'startRow', from: undefined, to: 1 },
      { kind: 'route', setting: 'lockEveryRow', from: undefined, to: true },
    ],
  ],
  [
    'findings',
    { ...body, extras: [{ id: 'card', kind: 'packaging', name: 'Card', count: 1 }] },
    [
      { kind: 'extra-added', name: 'Card', count: 1 },
      { kind: 'extra-removed', name: 'Ear wire', count: 2 },
    ],
  ],
]

describe('compareDesigns', () => {
  it.each(turns)('tells %s, and nothing else', (_, after, expected) => {
    const changes = compareDesigns(body, after)
    expect(changes).toHaveLength(expected.length)
    expect(changes).toMatchObject(expected)
  })

  it('tells the beads of a chart that changed, with their counts', () => {
    const chart = { ...panel.chart, rows: panel.chart.rows.with(1, { start: 1, cells: '1A 2B' }) }
    const [change, ...rest] = compareDesigns(body, { ...body, parts: [{ ...panel, chart }, loop] })
    expect(rest).toEqual([])
    if (change?.kind !== 'chart') throw new Error('expected a changed chart')
    expect(change.difference.cells.count).toBe(2)
    expect(change.difference.counts).toEqual([
      { slot: 0, from: 5, to: 3 },
      { slot: 1, from: 4, to: 6 },
    ])
  })

  it('finds nothing between a design and itself', () => {
    for (const [, one] of turns) expect(compareDesigns(one, structuredClone(one))).toEqual([])
  })

  it('tells the way back as many changes as the way there, each the other way round', () => {
    const anyBody = fc.constantFrom(body, ...turns.map(([, after]) => after))
    fc.assert(
      fc.property(anyBody, anyBody, (one, other) => {
        const [there, back] = [compareDesigns(one, other), compareDesigns(other, one)]
        expect(back).toHaveLength(there.length)
        const ends = (changes: typeof there, side: 'from' | 'to') =>
          changes.flatMap((change) => ('from' in change ? [String(change[side])] : [])).toSorted()
        expect(ends(back, 'to')).toEqual(ends(there, 'from'))
      }),
    )
  })
})
