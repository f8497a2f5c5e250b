import type { Bridge } from '../../shared-core/contract/bridge.ts'

declare global {
  interface Window {
    readonly tallystrand: Bridge
  }
}

/** All that the page can reach outside itself. */
export const bridge: Bridge = window.tallystrand
