import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { beadForms } from '../../../shared-core/beads/forms.ts'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import type { RouteSettings } from '../../../shared-core/design/design.ts'
import { toEvents } from '../../../shared-core/route/event-list.ts'
import { measureThread } from '../../../shared-core/route/measure-thread.ts'
import { panelGeometry } from '../../../shared-core/route/part-geometry.ts'
import { stitchOf } from '../../../shared-core/stitches/stitches.ts'
import { replayRoute } from './replay-route.ts'

const THREAD_MM = 0.17

/** The cylinder bead 11/0 the worked routes are measured with. */
export const cylinder: BeadForm = (() => {
  const form = beadForms.find(({ id }) => id === 'cylinder-11/0')
  if (form === undefined) throw new Error('The reference table has no cylinder 11/0')
  return form
})()

/**
 * A chart's route as laid, before ends are woven in, with its thread and what a replay finds.
 *
 * @param holdsOf passes a bead's hole holds; endless where it is left out
 */
export function lay(
  chart: Chart,
  settings: RouteSettings = {},
  holdsOf?: (bead: number) => number,
) {
  const index = indexBeads(chart)
  const geometry = panelGeometry(chart, index, cylinder, THREAD_MM)
  const draft = stitchOf(chart).layRoute({
    ...{ chart, index, geometry, settings },
    ...(holdsOf && {
      holds: Uint16Array.from({ length: index.count }, (_, bead) => holdsOf(bead)),
    }),
  })
  const events = toEvents(draft.events)
  const { throughMm, runMm, bendMm } = measureThread(draft.events, geometry)
  const ground = {
    index,
    xMm: geometry.xMm,
    yMm: geometry.yMm,
    lengthMm: cylinder.lengthMm.value,
    diameterMm: cylinder.diameterMm.value,
  }
  return {
    index,
    geometry,
    draft,
    events,
    warnings: draft.warnings,
    throughMm,
    threadMm: throughMm + runMm + bendMm,
    replay: replayRoute(events, ground),
    ground,
  }
}
