import { describe, expect, it } from 'vitest'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { findSticks } from '../../../shared-core/route/read-fill.ts'
import { designOf, panelOf, read } from './a-design.ts'
import { block } from './small-charts.ts'

describe('hole fill', () => {
  it('finds the beads that take more passes than their holes hold and says what helps', () => {
    const body = designOf([panelOf(block('square', 6, 6), { route: { reinforce: true } })], {
      threadId: 'cord-tex-135',
      needleSize: '11',
    })
    const reading = read(body)
    const full = reading.warnings.find(({ code }) => code === 'hole-full')
    expect(full?.next).toMatch(/[Tt]ake /)
    const [part] = reading.parts
    expect(Array.from(part?.fill ?? []).filter((fill) => fill === 2).length).toBeGreaterThan(0)
    part?.passes.forEach((passes, bead) => {
      expect(part.fill[bead] === 2).toBe(passes > (part.holds[bead] ?? 0))
    })
  })

  it('says at which event each bead takes a pass too many', () => {
    const body = designOf([panelOf(block('square', 3, 3), { route: { reinforce: true } })], {
      threadId: 'cord-tex-135',
    })
    const [part] = read(body).parts
    const holds = part?.holds ?? new Uint16Array(0)
    const sticks = part === undefined ? [] : findSticks(part.route, holds)
    const passes = new Array<number>(9).fill(0)
    const expected: { event: number; bead: number }[] = []
    part?.events.forEach((event, at) => {
      const beads =
        event.kind === 'pick-up' ? event.beads : event.kind === 'pass' ? [event.bead] : []
      for (const bead of beads) {
        passes[bead] = (passes[bead] ?? 0) + 1
        if (passes[bead] === (holds[bead] ?? 0) + 1) expected.push({ event: at, bead })
      }
    })
    expect(expected.length).toBeGreaterThan(0)
    expect(sticks).toEqual(expected)
  })

  it('offers to leave out reinforcing passes where that alone makes room', () => {
    const body = designOf([panelOf(block('square', 6, 6), { route: { reinforce: true } })], {
      threadId: 'nylon-d',
    })
    const [warning] = read(body).warnings
    expect(warning?.code).toBe('hole-full')
    expect(warning?.next).toMatch(/^Leave out the reinforcing passes there/)
    const plain = { ...body, parts: [panelOf(block('square', 6, 6))] }
    const worst = Math.max(...(read(plain).parts[0]?.passes ?? []))
    expect(worst).toBeLessThan(Math.max(...(read(body).parts[0]?.passes ?? [])))
  })

  it('advises a thread and needle with which the passes do fit', () => {
    const body = designOf([panelOf(block('square', 6, 6), { route: { reinforce: true } })], {
      threadId: 'cord-tex-135',
      needleSize: '11',
    })
    const advice = read(body).warnings.find(({ code }) => code === 'hole-full')?.next ?? ''
    const thread = referenceTables.threads.find(
      ({ name }) => advice.includes(`${name}:`) || advice.includes(`${name} and`),
    )
    const size = /size (\d+)/.exec(advice)?.[1] ?? '11'
    const cured = read({ ...body, threadId: thread?.id ?? body.threadId, needleSize: size })
    expect(cured.warnings.map(({ code }) => code)).not.toContain('hole-full')
  })
})
