import type { BeadForm } from '../beads/bead-form.ts'
import { type BeadIndex, indexBeads } from '../chart/bead-index.ts'
import type { Chart } from '../chart/chart.ts'
import { PASS, PICK_UP, TAIL } from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import type { HoleEnd } from '../route/find-weave.ts'
import { type PartGeometry, panelGeometry } from '../route/part-geometry.ts'
import { holesOf } from '../route/read-fill.ts'
import type { RouteDraft } from '../stitches/stitch.ts'
import { stitchOf } from '../stitches/stitches.ts'
import type { Panel } from './design.ts'
import type { ReadContext } from './read-options.ts'
import type { ResolvedPanel } from './resolve-design.ts'

/** A panel with its beads numbered and its thread laid, ends not yet woven in. */
export type StitchedPanel = Readonly<{
  panel: Panel
  chart: Chart
  form: BeadForm
  index: BeadIndex
  geometry: PartGeometry
  /** Passes each bead's hole holds. */
  holds: Uint16Array
  draft: RouteDraft
}>

/** Numbers a panel's beads and lays its thread. */
export function stitchPanel(
  context: ReadContext,
  { panel, chart, form }: ResolvedPanel,
): StitchedPanel {
  const { thread, checkpoint } = context
  const index = indexBeads(chart)
  checkpoint()
  const geometry = panelGeometry(chart, index, form, thread.diameterMm.value)
  checkpoint()
  const formOf = (bead: number) => context.formOfSlot(index.slotOf[bead] ?? 0, form)
  const holds = holesOf(index.count, { ...context, formOf })
  checkpoint()
  const settings = panel.route
  const draft = stitchOf(chart).layRoute({ chart, index, geometry, settings, holds, checkpoint })
  checkpoint()
  return { panel, chart, form, index, geometry, holds, draft }
}

/** Where the working thread leaves the work when all is stitched; a start tail taken up for a tip does not count. */
export function workingEnd({ kind, a, code, count, pool, poolDirection, b }: EventList): HoleEnd {
  let index = count - 1
  for (let at = 0; at < count; at += 1) {
    if (kind[at] === TAIL) {
      index = at - 1
      break
    }
  }
  for (; index >= 0; index -= 1) {
    if (kind[index] === PASS) return { bead: a[index] ?? 0, edge: (code[index] ?? 0) & 3 }
    if (kind[index] === PICK_UP) {
      const last = (a[index] ?? 0) + (b[index] ?? 1) - 1
      return { bead: pool[last] ?? 0, edge: poolDirection[last] ?? 0 }
    }
  }
  return { bead: 0, edge: 0 }
}
