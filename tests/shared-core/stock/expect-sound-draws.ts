import { expect } from 'vitest'
import type { Cover, CoverRequest } from '../../../shared-core/stock/cover.ts'

/** Whole units from lots, all that is held, and never more than a lot has. */
export function expectSoundDraws(cover: Cover, request: CoverRequest): void {
  const used = new Map<string, number>()
  for (const { lineId, limits, units, ordered } of cover.lines) {
    const needs = request.lines.find((other) => other.lineId === lineId)?.needs ?? []
    const draws = cover.drawsOf(lineId)
    expect(draws.map(({ materialId }) => materialId)).toEqual(needs.map((n) => n.materialId))
    draws.forEach((own, i) => {
      const perUnit = needs[i]?.quantity ?? 0
      const limit = limits.find(({ materialId }) => materialId === own.materialId)
      const total = own.draws.reduce((sum, draw) => sum + draw.quantity, 0)
      const held =
        request.hold === 'promise' ? ordered * perUnit - (limit?.short ?? 0) : units * perUnit
      expect(total).toBe(held)
      for (const draw of own.draws) {
        used.set(draw.lotId, (used.get(draw.lotId) ?? 0) + draw.quantity)
        if (needs[i]?.lotsMatter) expect(draw.quantity).toBe((draw.units ?? -1) * perUnit)
      }
    })
  }
  const held = cover.heldByLot()
  for (const { lotId, onHand } of request.lots) {
    expect(held.get(lotId) ?? 0).toBe(used.get(lotId) ?? 0)
    expect(used.get(lotId) ?? 0).toBeLessThanOrEqual(onHand)
  }
}
