import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addPanel,
  addStrand,
  copyPart,
  movePart,
  removeExtra,
  removePart,
} from '../../../renderer/rooms/designs/parts/part-edits.ts'
import { startChart } from '../../../renderer/rooms/designs/parts/start-chart.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { fromChartJson } from '../../../shared-core/chart/chart-json.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { earLoop, fringe, tidewrack } from './sample-body.ts'

const body = tidewrack(earLoop, fringe)

function read(body: DesignBody) {
  const reading = readDesign(body, referenceTables)
  if (!reading.ok) throw new Error(reading.error.message)
  return reading.value
}

describe('part edits', () => {
  it('adds a panel that can be stitched, in the first panel’s form and as often', () => {
    const { body: after, partId } = addPanel(body)
    const added = after.parts.find(({ id }) => id === partId)
    expect(added).toMatchObject({ kind: 'panel', copies: 2, formId: 'cylinder-11/0' })
    expect(read(after).warnings.filter((warning) => warning.partId === partId)).toEqual([])
    expect(read(after).beads - read(body).beads).toBe(2 * 36)
  })

  it.each([
    'brick',
    'peyote',
    'square',
    'loom',
    'ladder',
    'herringbone',
    'right-angle-weave',
  ] as const)('begins %s with a chart that can be stitched', (stitch) => {
    const chart = startChart(stitch)
    const [panel] = tidewrack().parts
    if (panel?.kind !== 'panel') throw new Error('expected a panel')
    expect(fromChartJson(chart).rows.length).toBeGreaterThan(0)
    const { warnings } = read({ ...tidewrack(), parts: [{ ...panel, chart }] })
    expect(warnings.filter(({ severity }) => severity === 'impossible')).toEqual([])
  })

  it('hangs a new fringe at the foot and a new loop, with its finding, at the head', () => {
    const [{ body: one }, { body: two }] = [addStrand(body, 'fringe'), addStrand(body, 'loop')]
    expect(one.parts.at(-1)).toMatchObject({ anchor: { panelId: 'panel', row: 22, bead: 0 } })
    expect(two.parts.at(-1)).toMatchObject({ anchor: { row: 0, bead: 0 }, findingId: 'wire' })
    expect(read(one).beads).toBeGreaterThan(read(body).beads)
  })

  it('copies a panel with all that hangs from it, under names and ids of their own', () => {
    const { body: after, partId } = copyPart(body, 'panel')
    expect(after.parts).toHaveLength(6)
    expect(new Set(after.parts.map(({ id }) => id)).size).toBe(6)
    expect(new Set(after.parts.map(({ name }) => name)).size).toBe(6)
    const hanging = after.parts.filter(
      (part) => part.kind === 'strand' && part.anchor?.panelId === partId,
    )
    expect(hanging).toHaveLength(2)
    expect(read(after).beads).toBe(2 * read(body).beads)
  })

  it('takes a panel away with all that hangs from it', () => {
    expect(removePart(body, 'panel').body.parts).toEqual([])
    expect(removePart(body, 'loop').body.parts.map(({ id }) => id)).toEqual(['panel', 'fringe'])
  })

  it('leaves no strand that carries a finding which is gone', () => {
    const after = removeExtra(body, 'wire')
    expect(after.extras.map(({ id }) => id)).toEqual(['card'])
    expect(after.parts[1]).not.toHaveProperty('findingId')
    expect(read(after).beads).toBe(read(body).beads)
  })

  it('moving a part up and down again changes nothing', () => {
    const anyPart = fc.constantFrom(...body.parts.map(({ id }) => id))
    fc.assert(
      fc.property(anyPart, fc.constantFrom(-1 as const, 1 as const), (id, by) => {
        const moved = movePart(body, id, by)
        const back = moved === body ? body : movePart(moved, id, by === 1 ? -1 : 1)
        expect(back.parts.map((part) => part.id)).toEqual(body.parts.map((part) => part.id))
      }),
    )
  })
})
