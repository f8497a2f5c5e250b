import type { BeadFinish } from '../../shared-core/beads/bead-form.ts'

const words: Readonly<Record<BeadFinish, string>> = {
  opaque: 'Opaque',
  matte: 'Matte',
  gloss: 'Opaque, glossy',
  transparent: 'Transparent',
  lined: 'Lined',
  metallic: 'Metallic',
  iridescent: 'Iridescent',
}

/** The finishes a bead can have, as a list to choose from. */
export const finishOptions = (Object.keys(words) as BeadFinish[]).map((value) => ({
  value,
  label: words[value],
}))
