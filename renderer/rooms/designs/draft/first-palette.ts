import { slotIndex, slotLabel } from '../../../../shared-core/chart/chart.ts'
import type { PaletteSlot } from '../../../../shared-core/design/design.ts'

/** Colours a new chart is drawn in until beads are chosen: far apart in lightness as well as in hue. */
const firstLooks = [
  ['slate', '#465a66'],
  ['sea', '#2f7d8c'],
  ['shell', '#e9dfd0'],
  ['amber', '#d08a2e'],
  ['samphire', '#6a9a55'],
  ['rust', '#9a4a2b'],
  ['fog', '#b4bec3'],
  ['ink', '#1d2b3d'],
  ['heather', '#8a6a94'],
  ['sand', '#d6bf93'],
  ['kelp', '#39502f'],
  ['coral', '#d8735f'],
] as const

/** A palette for every slot that runs of beads use, A to the last, each in a colour of its own as far as they go. */
export function firstPalette(runs: readonly string[], formId: string): readonly PaletteSlot[] {
  return Array.from({ length: lastSlot(runs) + 1 }, (_, at) => {
    const [name, colourHex] = firstLooks[at % firstLooks.length] ?? firstLooks[0]
    const finish = at % 3 === 2 ? ('gloss' as const) : ('matte' as const)
    return { label: slotLabel(at), name, formId, colourHex, finish }
  })
}

function lastSlot(runs: readonly string[]): number {
  let last = 0
  for (const text of runs) {
    for (const [letters] of text.matchAll(/[A-Z]+/g)) {
      last = Math.max(last, slotIndex(letters) ?? 0)
    }
  }
  return last
}
