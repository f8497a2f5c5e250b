import { bridgePlace } from '../route/bridge-place.ts'
import { HOOK, LOCK, PASS, PICK_UP, RIGHT, ROW } from '../route/event-codes.ts'
import type { BenchStep } from '../route/route.ts'
import type { BridgeAt, ReaderStep } from './reader-script.ts'
import type { StretchSource } from './stretch-source.ts'

/** A stretch being written: the side its present row is worked from goes on from step to step. */
export type Work = { readonly source: StretchSource; fromRight: boolean }

/** One step with the beads it picks up and the bridges it goes under. */
export function writeStep(
  work: Work,
  { text, fromEvent, toEvent }: BenchStep,
  way: string,
): ReaderStep {
  const { route, words, drawnBead, slotOf } = work.source
  const beads: number[] = []
  const bridges: BridgeAt[] = []
  let hasLock = false
  for (let index = fromEvent; index <= toEvent; index += 1) {
    const kind = route.kind[index]
    const [a, b, code] = [route.a[index] ?? 0, route.b[index] ?? 0, route.code[index] ?? 0]
    if (kind === ROW) work.fromRight = code === RIGHT
    if (kind === PICK_UP) beads.push(...Array.from(route.pool.subarray(a, a + b), drawnBead))
    if (kind === HOOK && words.runs !== undefined) {
      const place = bridgePlace(words.runs, { a, b }, work.fromRight)
      bridges.push({ place, a: drawnBead(a), b: drawnBead(b) })
    }
    if (kind === PASS && code >> 2 === LOCK) hasLock = true
  }
  return { text, way, beads, slots: beads.map((bead) => slotOf[bead] ?? 0), bridges, hasLock }
}
