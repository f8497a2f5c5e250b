import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { assemble } from '../../../renderer/rooms/designs/assembly/assemble.ts'
import { layAcross } from '../../../renderer/rooms/designs/assembly/lay-across.ts'
import { loopArc } from '../../../renderer/rooms/designs/assembly/loop-arc.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { BEGINS, routeLine, THROUGH } from '../../../shared-core/route/route-line.ts'
import { earLoop, fringe, tidewrack } from './sample-body.ts'

function assembled(body: DesignBody) {
  const read = readDesign(body, referenceTables)
  if (!read.ok) throw new Error(read.error.message)
  const { parts } = read.value
  const assembly = assemble({ body, tables: referenceTables, looks: [], parts })
  if (assembly === undefined) throw new Error('expected something to draw')
  return { assembly, parts }
}

describe('loopArc', () => {
  const anyLoop = fc.record({
    chordMm: fc.double({ min: 0.5, max: 6, noNaN: true }),
    over: fc.double({ min: 1.05, max: 12, noNaN: true }),
    turn: fc.double({ min: 0, max: 6.2, noNaN: true }),
  })

  it('begins and ends at its two points and is as long as asked', () => {
    fc.assert(
      fc.property(anyLoop, ({ chordMm, over, turn }) => {
        const from = { x: 3, y: -2 }
        const to = { x: 3 + chordMm * Math.cos(turn), y: -2 + chordMm * Math.sin(turn) }
        const out = { x: Math.sin(turn), y: -Math.cos(turn) }
        const lengthMm = chordMm * over
        const curve = loopArc(from, to, lengthMm, out)
        expect(curve(0).at.x).toBeCloseTo(from.x, 6)
        expect(curve(0).at.y).toBeCloseTo(from.y, 6)
        expect(curve(lengthMm).at.x).toBeCloseTo(to.x, 6)
        expect(curve(lengthMm).at.y).toBeCloseTo(to.y, 6)
        let walkedMm = 0
        const steps = 2000
        for (let step = 1; step <= steps; step += 1) {
          const [a, b] = [
            curve(((step - 1) * lengthMm) / steps).at,
            curve((step * lengthMm) / steps).at,
          ]
          walkedMm += Math.hypot(b.x - a.x, b.y - a.y)
        }
        expect(walkedMm).toBeCloseTo(lengthMm, 3)
      }),
    )
  })

  it('bulges to the side it is told', () => {
    const up = loopArc({ x: 0, y: 0 }, { x: 1.6, y: 0 }, 8, { x: 0, y: -1 })
    const down = loopArc({ x: 0, y: 0 }, { x: 1.6, y: 0 }, 8, { x: 0, y: 1 })
    expect(up(4).at.y).toBeLessThan(-1)
    expect(down(4).at.y).toBeGreaterThan(1)
  })

  it('is a straight line when it is too short to bulge', () => {
    const curve = loopArc({ x: 0, y: 0 }, { x: 4, y: 0 }, 3, { x: 0, y: -1 })
    expect(curve(2)).toEqual({ at: { x: 2, y: 0 }, way: { x: 1, y: 0 } })
  })
})

describe('assemble', () => {
  it('draws a panel alone as it is, bead for bead', () => {
    const { assembly } = assembled(tidewrack())
    expect(assembly.scene.xMm.length).toBe(161)
    expect(assembly.parts.map(({ partId, firstBead }) => [partId, firstBead])).toEqual([
      ['panel', 0],
    ])
  })

  it('hangs a loop above the panel and every copy of a fringe below it', () => {
    const { assembly } = assembled(tidewrack(earLoop, fringe))
    const { scene, parts } = assembly
    expect(parts.map(({ partId, firstBead, beads }) => [partId, firstBead, beads])).toEqual([
      ['panel', 0, 161],
      ['loop', 161, 6],
      ['fringe', 167, 5],
      ['fringe', 172, 5],
    ])
    const panelTop = Math.min(...scene.yMm.subarray(0, 161))
    const panelFoot = Math.max(...scene.yMm.subarray(0, 161))
    for (const y of scene.yMm.subarray(161, 167)) expect(y).toBeLessThan(panelTop)
    for (const y of scene.yMm.subarray(167)) expect(y).toBeGreaterThan(panelFoot)
    expect((scene.xMm[172] ?? 0) - (scene.xMm[167] ?? 0)).toBeCloseTo(1.6, 3)
  })

  it('keeps all beads inside the size of the picture', () => {
    const { scene } = assembled(tidewrack(earLoop, fringe)).assembly
    for (let bead = 0; bead < scene.xMm.length; bead += 1) {
      expect(scene.xMm[bead]).toBeGreaterThanOrEqual(0)
      expect(scene.yMm[bead]).toBeGreaterThanOrEqual(0)
      expect(scene.xMm[bead]).toBeLessThanOrEqual(scene.widthMm)
      expect(scene.yMm[bead]).toBeLessThanOrEqual(scene.heightMm)
    }
  })

  it('lets a strand’s thread run from the panel through the strand without a jump', () => {
    const { assembly, parts } = assembled(tidewrack(earLoop))
    const placed = assembly.parts.find(({ partId }) => partId === 'loop')
    const part = parts.find(({ partId }) => partId === 'loop')
    if (placed?.joined === undefined || part === undefined) throw new Error('expected the loop')
    const line = routeLine(part.route, placed.geometry, { own: placed.own, joined: placed.joined })
    for (let at = 1; at < line.count; at += 1) {
      if (line.comesBy[at] === BEGINS || line.comesBy[at] === THROUGH) continue
      const mm = Math.hypot(
        (line.xMm[at] ?? 0) - (line.xMm[at - 1] ?? 0),
        (line.yMm[at] ?? 0) - (line.yMm[at - 1] ?? 0),
      )
      expect(mm).toBeLessThan(3)
    }
  })
})

describe('layAcross', () => {
  it('turns places, size and hole ends a quarter to the left', () => {
    const { assembly } = assembled(tidewrack(earLoop))
    const laid = layAcross(assembly)
    const { scene } = assembly
    expect([laid.scene.widthMm, laid.scene.heightMm]).toEqual([scene.heightMm, scene.widthMm])
    expect(laid.scene.axis).toBe('horizontal')
    const [before, after] = [assembly.parts[0]?.own, laid.parts[0]?.own]
    for (const bead of [0, 40, 160]) {
      expect(laid.scene.xMm[bead]).toBe(scene.yMm[bead])
      expect(after?.xMm(bead, 0)).toBe(before?.yMm(bead, 0))
      expect(after?.yMm(bead, 0)).toBeCloseTo(scene.widthMm - (before?.xMm(bead, 0) ?? 0), 9)
    }
  })

  it('four turns give the same places again', () => {
    const { assembly } = assembled(tidewrack(earLoop))
    const again = layAcross(layAcross(layAcross(layAcross(assembly))))
    again.scene.xMm.forEach((x, bead) => {
      expect(x).toBeCloseTo(assembly.scene.xMm[bead] ?? 0, 3)
    })
    expect(again.scene.axis).toBe(assembly.scene.axis)
  })
})
