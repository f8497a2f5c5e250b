import type { BeadIndex } from '../chart/bead-index.ts'
import type { Chart, StitchKind } from '../chart/chart.ts'
import type { RouteSettings } from '../design/design.ts'
import type { Checkpoint } from '../route/checkpoint.ts'
import type { EventList } from '../route/event-list.ts'
import type { Hops } from '../route/find-weave.ts'
import type { PartGeometry } from '../route/part-geometry.ts'
import type { RouteWarning } from '../route/route.ts'

/** What a stitch is given to lay its route: the chart, its beads by number, where they lie, and the maker's wishes. */
export type StitchTask = Readonly<{
  chart: Chart
  index: BeadIndex
  geometry: PartGeometry
  settings: RouteSettings
  /** Passes each bead's hole holds, by bead number; endless where it is left out. */
  holds?: Uint16Array
  /** Called now and then while the route is laid; throws when it is no longer wanted. */
  checkpoint?: Checkpoint
}>

/**
 * A route before threads are cut and tails woven in.
 *
 * `hops` tells where a thread can travel from a hole end once everything is stitched.
 */
export type RouteDraft = Readonly<{
  events: EventList
  warnings: readonly RouteWarning[]
  hops: Hops
  /** How the work begins, where a stitch has a choice. */
  start?: 'ladder' | 'two-bead'
}>

/**
 * What a stitch must give, in a folder of its own under `stitches/`.
 *
 * Its lattice stands in `chart/stitch-pitch.ts`, its word chart in `words/`.
 */
export type Stitch = Readonly<{
  kind: StitchKind
  /** Lays the thread through the chart. Never throws for a chart: what cannot be stitched is a warning. */
  layRoute: (task: StitchTask) => RouteDraft
}>
