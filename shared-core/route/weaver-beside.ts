import type { EventWriter } from './event-writer.ts'
import { createWeaver, type Weaver } from './find-weave.ts'

/**
 * Memory for searches in the work a writer writes: it knows which holes are full by now.
 *
 * @param holds - Passes each bead's hole holds, by the writer's bead numbers; endless without.
 * @param numberOf - The writer's number of a bead where the search numbers them otherwise.
 */
export function weaverBeside(
  { passes, checkpoint }: EventWriter,
  holds: Uint16Array | undefined,
  numberOf?: Int32Array | Uint32Array,
): Weaver {
  if (holds === undefined) return createWeaver(passes.length, { checkpoint })
  const isFull = (bead: number) => (passes[bead] ?? 0) >= (holds[bead] ?? 0)
  return createWeaver(passes.length, {
    checkpoint,
    isFull: numberOf === undefined ? isFull : (bead) => isFull(numberOf[bead] ?? 0),
  })
}
