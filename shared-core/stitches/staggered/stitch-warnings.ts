import type { RouteWarning } from '../../route/route.ts'
import type { StitchTask } from '../stitch.ts'
import type { Runs } from './find-runs.ts'
import type { RunPlan } from './plan-runs.ts'

/** Beads a warning points at, at most: enough to see, never a copy of a giant chart. */
const MAX_NAMED = 500

/** What a stitch knows after its route is laid; bead numbers are those of `Laid.runs`. */
export type StitchedWork = Readonly<{
  worked: Uint8Array
  /** Beads beside which the thread had to run in sight. */
  shownAt: readonly number[]
  /** Single beads a row hangs from. */
  necks: readonly number[]
  /** Beads that meet other work which nothing joins them to. */
  openSeams?: readonly number[]
}>

type Laid = Readonly<{
  runs: Runs
  main: readonly number[]
  floating: readonly number[]
  plan: RunPlan
  task: StitchTask
  /** Chart row of a run, where runs do not lie in chart rows. */
  rowOf?: (run: number) => number
  /** Chart bead of a bead number of `runs`, where they differ. */
  beadOf?: (bead: number) => number
}>

/** What the maker must know about a brick route: what cannot be stitched, what shows, what was not as asked. */
export function stitchWarnings(work: StitchedWork, laid: Laid): readonly RouteWarning[] {
  const { beadOf } = laid
  const warnings = [
    ...floatingBeads(laid),
    ...unstitchableBeads(work, laid),
    ...startRowRefused(laid),
    ...shownThread(work),
    ...necks(work),
    ...openSeams(work),
  ]
  if (beadOf === undefined) return warnings
  return warnings.map((warning) => ({ ...warning, beads: warning.beads.map(beadOf) }))
}

function floatingBeads({ runs, floating }: Laid): readonly RouteWarning[] {
  const { count, beads } = beadsWhere(runs, floating, () => true)
  if (count === 0) return []
  return [
    {
      code: 'floating-beads',
      severity: 'impossible',
      message: `${count} ${plural(count, 'bead touches', 'beads touch')} no bead of the rest, so no thread reaches ${plural(count, 'it', 'them')}.`,
      next: 'Join them with beads between, or make them a panel of their own.',
      beads,
    },
  ]
}

function unstitchableBeads(
  { worked }: StitchedWork,
  { runs, main }: Laid,
): readonly RouteWarning[] {
  const { count, beads } = beadsWhere(runs, main, (bead) => worked[bead] === 0)
  if (count === 0) return []
  return [
    {
      code: 'no-bridge',
      severity: 'impossible',
      message: `${count} ${plural(count, 'bead', 'beads')} cannot be held: there is no bridge to hang on and no bead beside.`,
      next: 'Widen the place where they hang to two beads, or start from another row.',
      beads,
    },
  ]
}

function plural(count: number, one: string, many: string): string {
  return count === 1 ? one : many
}

/** Counts the beads of some runs that pass a test, and names the first of them. */
function beadsWhere(
  { first, last }: Runs,
  among: readonly number[],
  test: (bead: number) => boolean,
) {
  const beads: number[] = []
  let count = 0
  for (const run of among) {
    for (let bead = first[run] ?? 0; bead <= (last[run] ?? -1); bead += 1) {
      if (!test(bead)) continue
      count += 1
      if (beads.length < MAX_NAMED) beads.push(bead)
    }
  }
  return { count, beads }
}

function startRowRefused({ runs, plan, task, rowOf }: Laid): readonly RouteWarning[] {
  const asked = task.settings.startRow
  const row = rowOf?.(plan.start.run) ?? runs.row[plan.start.run] ?? 0
  if (asked === undefined || asked === row) return []
  return [
    {
      code: 'start-row-unusable',
      severity: 'warning',
      message: `Row ${asked + 1} has no two beads side by side to start from; row ${row + 1} is used.`,
      next: 'Choose a start row with two beads side by side.',
      beads: [],
    },
  ]
}

function shownThread({ shownAt }: StitchedWork): readonly RouteWarning[] {
  if (shownAt.length === 0) return []
  return [
    {
      code: 'thread-shows',
      severity: 'note',
      message: 'The thread must run along the outside of these beads to come back.',
      next: 'Widen the tip to two beads, or accept a short run of thread in sight.',
      beads: shownAt.slice(0, MAX_NAMED),
    },
  ]
}

function necks({ necks: beads }: StitchedWork): readonly RouteWarning[] {
  if (beads.length === 0) return []
  return [
    {
      code: 'single-bead-neck',
      severity: 'warning',
      message: 'A row hangs from a single bead: its hole takes four passes and the place is weak.',
      next: 'Make the narrow place two beads wide where the piece will be pulled.',
      beads: beads.slice(0, MAX_NAMED),
    },
  ]
}

function openSeams({ openSeams: beads = [] }: StitchedWork): readonly RouteWarning[] {
  if (beads.length === 0) return []
  return [
    {
      code: 'open-seam',
      severity: 'warning',
      message: 'Here two parts of the work meet edge to edge, and no stitch joins them.',
      next: 'Start from another row, or sew the two edges together when all is done.',
      beads: beads.slice(0, MAX_NAMED),
    },
  ]
}
