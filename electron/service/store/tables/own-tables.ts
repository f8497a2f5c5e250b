import type { BeadFamily } from '../../../../shared-core/beads/bead-form.ts'
import type { ThreadConstruction } from '../../../../shared-core/beads/thread.ts'
import type { Basis } from '../../../../shared-core/units/spread.ts'
import type { Kept } from './kept.ts'

/** A figure with its range and what it rests on, as four columns. */
type SpreadColumns<Name extends string, Unit extends string = ''> = Readonly<
  Record<`${Name}${Unit}` | `${Name}_low${Unit}` | `${Name}_high${Unit}`, number> &
    Record<`${Name}_basis`, Basis>
>

export type OwnFormTable = Kept &
  Readonly<{ form_id: string; name: string; family: BeadFamily; size_label: string }> &
  SpreadColumns<'diameter', '_mm'> &
  SpreadColumns<'length', '_mm'> &
  SpreadColumns<'hole', '_mm'> &
  SpreadColumns<'beads_per_gram'> &
  SpreadColumns<'cull_rate'>

export type OwnThreadTable = Kept &
  Readonly<{
    thread_id: string
    name: string
    construction: ThreadConstruction
    tex: number | null
  }> &
  SpreadColumns<'diameter', '_mm'>
