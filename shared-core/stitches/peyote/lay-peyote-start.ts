import type { PeyoteWork } from './peyote-work.ts'
import { pickBead, towards } from './peyote-work.ts'

/** Strings the first two half rows together, column by column in the direction of work. */
export function layPeyoteStart(work: PeyoteWork, beads: readonly number[], along: number): void {
  const { atOf } = work.lattice
  const strung = [...beads].sort((a, b) => along * ((atOf[a] ?? 0) - (atOf[b] ?? 0)))
  strung.forEach((bead, at) => {
    pickBead(work, bead, towards(along), at > 0)
  })
}
