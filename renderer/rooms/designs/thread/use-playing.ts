import { useSyncExternalStore } from 'react'
import type { Player, Playing } from './player.ts'

/** Where the needle is, kept up to date. */
export function usePlaying(player: Player): Playing {
  return useSyncExternalStore(player.listen, player.read)
}
