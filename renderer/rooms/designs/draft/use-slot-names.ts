import { useMemo, useState } from 'react'
import type { PaletteSlot } from '../../../../shared-core/design/design.ts'

/** Names of slots as they are typed, before there is a design. */
export type SlotNaming = Readonly<{
  /** What was typed for a slot; `undefined` when nobody has touched its name. */
  typed: (slot: PaletteSlot) => string | undefined
  onName: (slot: PaletteSlot, name: string) => void
  /** The palette with the names typed; an emptied one keeps the name it came with. */
  named: (palette: readonly PaletteSlot[]) => readonly PaletteSlot[]
}>

/** Keeps the names of slots by letter and colour: one stays while its colour does, whatever else is tried. */
export function useSlotNames(): SlotNaming {
  const [names, setNames] = useState<ReadonlyMap<string, string>>(new Map())
  return useMemo(
    () => ({
      typed: (slot) => names.get(keyOf(slot)),
      onName: (slot, name) => setNames(new Map(names).set(keyOf(slot), name)),
      named: (palette) => withNames(palette, names),
    }),
    [names],
  )
}

/** A palette with names by `keyOf` its slots, where one was given. */
export function withNames(
  palette: readonly PaletteSlot[],
  names: ReadonlyMap<string, string>,
): readonly PaletteSlot[] {
  return palette.map((slot) => ({ ...slot, name: names.get(keyOf(slot))?.trim() || slot.name }))
}

/** What a name is kept by. */
export function keyOf({ label, colourHex }: PaletteSlot): string {
  return `${label} ${colourHex}`
}
