import type { ReaderLine } from '../../../../shared-core/bench/reader-script.ts'
import type { ReaderSettings } from './reader-settings.ts'

/** How long the timer leaves what is shown, ms: by its beads. `undefined` at thread, ends and warps, where it waits. */
export function lineMs(
  { kind, steps }: ReaderLine,
  step: number,
  { stride, beadS }: Pick<ReaderSettings, 'stride' | 'beadS'>,
): number | undefined {
  if (kind !== 'row' && kind !== 'strand') return undefined
  const shown = stride === 'step' ? steps.slice(step, step + 1) : steps.slice(step)
  const beads = shown.reduce((sum, one) => sum + one.beads.length, 0)
  return Math.max(1, beads) * beadS * 1_000
}
