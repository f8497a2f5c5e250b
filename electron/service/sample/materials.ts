import { cylinderBeads } from './drawers/cylinder-beads.ts'
import { findings } from './drawers/findings.ts'
import { packaging } from './drawers/packaging.ts'
import { roundBeads } from './drawers/round-beads.ts'
import { threads } from './drawers/threads.ts'
import type { SampleMaterial } from './sample-material.ts'

/** What stands in the drawers of Saltmarsh Beadworks. Beads in mg, thread in mm, the rest in pieces. */
export const sampleMaterials: readonly SampleMaterial[] = [
  ...cylinderBeads,
  ...roundBeads,
  ...threads,
  ...findings,
  ...packaging,
]
