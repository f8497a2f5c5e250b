import { describe, expect, it } from 'vitest'
import { bridgeRuns } from '../../../renderer/rooms/bench/reader/tell-bridges.ts'
import { tellHoles } from '../../../renderer/rooms/bench/reader/tell-holes.ts'
import {
  lineName,
  lineSide,
  pieceName,
  speakLine,
  type Telling,
  tellBare,
  tellStep,
  tellWork,
} from '../../../renderer/rooms/bench/reader/tell-line.ts'
import { mapOf } from '../../shared-core/bench/written.ts'
import { designOf, panelOf, strandOf } from '../../shared-core/design/a-design.ts'
import { drawChart } from '../../shared-core/stitches/draw-chart.ts'

const names = ['wet slate', 'brine', 'lamp amber']
const telling: Telling = {
  beadName: (slot) => names[slot] ?? '',
  thread: (mm) => `${mm} mm`,
  stitchOf: (partId) => (partId === 'panel' ? 'brick' : undefined),
}
const diamond = drawChart('brick', ['..A-A-', '.A-B-A-', 'A-B-B-A-', '.A-B-A-', '..A-A-'])
const body = designOf([
  panelOf(diamond, { copies: 2, mirrored: true }),
  strandOf('3B 1C', { name: 'Reed', anchor: { panelId: 'panel', row: 4, bead: 0 } }),
])
const { lines } = mapOf(body)
const row = (number: number) => {
  const found = lines.find(({ line }) => line.rows[0] === number)
  if (found === undefined) throw new Error(`No row ${number}`)
  return found
}

describe('a row in words', () => {
  it('has its number, its side, its beads by name and the bridge of each', () => {
    expect(speakLine(row(3), telling)).toBe(
      'Row 3 from the right. 1 wet slate, 2 brine, 1 wet slate. First two together under bridge 1. Then bridge 2 twice.',
    )
  })

  it('says where the first two are locked', () => {
    expect(tellWork(row(4), telling)).toBe(
      'First two together under bridge 2, lock. Then bridge 3.',
    )
  })

  it('is told from the other side in the mirrored copy', () => {
    const image = lines.find(({ line, piece }) => piece.isMirrored && line.rows[0] === 3)
    expect(image && lineSide(image.line)).toBe('from the left')
    expect(image && pieceName(image.piece)).toBe('Panel 2 of 2, mirrored')
  })

  it('is told bead by bead with the way of the needle', () => {
    const [first] = row(4).line.steps
    expect(first && tellStep(first, telling)).toBe(
      '1 wet slate, 1 brine. Under bridge 2 from the edge; up through B; lock.',
    )
  })
})

it('bridges that count up are told as a run', () => {
  expect(bridgeRuns([2, 3, 4, 5, 5])).toBe('bridges 2 to 5, then 5 again')
  expect(bridgeRuns([1])).toBe('bridge 1')
  expect(bridgeRuns([1, 3, 4])).toBe('bridges 1, then 3 to 4')
  expect(bridgeRuns([])).toBe('')
})

describe('what comes between rows', () => {
  it('is the needle threaded, with the length to cut', () => {
    const [first] = lines
    expect(first && lineName(first)).toBe('Thread the needle')
    expect(first && tellBare(first, telling)).toBe(`Cut ${first?.line.threadMm} mm`)
  })

  it('is a strand with its turn bead', () => {
    const strand = lines.find(({ line }) => line.kind === 'strand')
    expect(strand && lineName(strand)).toBe('Reed')
    expect(strand && tellWork(strand, telling)).toBe(
      'It hangs from row 5, bead 1 of the panel. Skip the last bead, the turn bead, and go back up through the rest.',
    )
    expect(strand?.line.steps[0] && tellStep(strand.line.steps[0], telling)).toMatch(
      /up through row 5, bead 1 of the panel\.$/,
    )
    const image = lines.find(({ line, piece }) => piece.isMirrored && line.kind === 'strand')
    expect(image && tellWork(image, telling)).toContain('row 5, bead 2 of the panel')
  })

  it('is warps by number and length', () => {
    const loom = mapOf(designOf([panelOf(drawChart('loom', ['AAB', 'ABA']))]))
    const warps = loom.lines.find(({ line }) => line.kind === 'warp')
    expect(warps && tellBare(warps, telling)).toBe(
      `Hang 4 warps of ${warps?.line.warps?.lengthMm} mm each`,
    )
  })
})

it('holes are told as a warning only where they fill or stick', () => {
  const plain = row(3)
  expect(tellHoles(plain, undefined)).toEqual([])
  const note = { step: 3, bead: 1, holds: 4, partId: 'panel' }
  const stuck = {
    ...plain,
    line: { ...plain.line, holes: [{ ...note, kind: 'sticks' as const }] },
  }
  expect(tellHoles(stuck, undefined)[0]).toContain('one hole holds 4 passes')
  // By bead, at the bead whose pass it is.
  const at = note.step - plain.line.firstStep
  expect(tellHoles(stuck, at)[0]).toContain('one hole holds 4 passes')
  expect(tellHoles(stuck, at + 1)).toEqual([])
  const full = { ...plain, line: { ...plain.line, holes: [{ ...note, kind: 'fills' as const }] } }
  expect(tellHoles(full, undefined)[0]).toContain('full after row 3')
})
