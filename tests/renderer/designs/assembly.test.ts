import { describe, expect, it } from 'vitest'
import { assemble } from '../../../renderer/rooms/designs/assembly/assemble.ts'
import { layAcross } from '../../../renderer/rooms/designs/assembly/lay-across.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { BEGINS, routeLine, THROUGH } from '../../../shared-core/route/route-line.ts'
import { earLoop, fringe, tidewrack } from './sample-body.ts'

function assembled(body: DesignBody) {
  const read = readDesign(body, referenceTables)
  if (!read.ok) throw new Error(read.error.message)
  const { parts } = read.value
  const assembly = assemble({ body, tables: referenceTables, looks: [] })
  if (assembly === undefined) throw new Error('expected something to draw')
  return { assembly, parts }
}

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
