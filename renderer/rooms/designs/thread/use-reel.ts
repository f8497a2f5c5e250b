import { useEffect, useMemo } from 'react'
import { routeLine } from '../../../../shared-core/route/route-line.ts'
import type { PlacedPart } from '../assembly/assemble.ts'
import type { PlainPart } from '../reading/plain-reading.ts'
import type { Player, Reel } from './player.ts'

/** Loads a part's journey into the player. */
export function useReel(
  player: Player,
  part: PlainPart | undefined,
  placed: PlacedPart | undefined,
): Reel | undefined {
  const reel = useMemo(() => {
    if (part === undefined || placed === undefined) return undefined
    const { geometry, own, joined } = placed
    return {
      line: routeLine(part.route, geometry, { own, ...(joined && { joined }) }),
      steps: part.steps,
    }
  }, [part, placed])
  useEffect(() => {
    if (reel !== undefined) player.load(reel)
  }, [player, reel])
  return reel
}
