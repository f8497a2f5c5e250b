import type { BeadForm } from '../beads/bead-form.ts'
import { fillOf, type HoleUse, holeCapacity } from '../beads/hole-capacity.ts'
import type { Needle, Thread } from '../beads/thread.ts'
import type { BeadTables } from '../beads/user-forms.ts'
import { FINISH, PASS, PICK_UP, REINFORCE, WEAVE } from './event-codes.ts'
import type { EventList } from './event-list.ts'
import type { RouteWarning } from './route.ts'

/** How full each bead's hole is, in order of bead numbers: 0 free, 1 tight, 2 full; and how many passes it holds. */
export type HoleFill = Readonly<{ fill: Uint8Array; holds: Uint16Array }>

/** Beads a warning points at, at most. */
const MAX_NAMED = 500

const CODES = { free: 0, tight: 1, full: 2 } as const

/** What goes through the beads, and the tables to look for something finer in. */
export type FillTask = Readonly<{
  passes: Uint16Array
  /** The route behind the passes, to see what each pass is for. */
  events: EventList
  /** Form of each bead. */
  formOf: (bead: number) => BeadForm
  thread: Thread
  /** Strands of thread in each pass. */
  strands: 1 | 2
  needle: Needle
  tables: BeadTables
}>

/** Fills holes in order of passes: capacity by the needle on the last pass and the threads already there. */
export function readFill(task: FillTask): HoleFill {
  const { passes } = task
  const fill = new Uint8Array(passes.length)
  const holds = holesOf(passes.length, task)
  for (let bead = 0; bead < passes.length; bead += 1) {
    fill[bead] = CODES[fillOf(passes[bead] ?? 0, holds[bead] ?? 0)]
  }
  return { fill, holds }
}

/** Passes each of some beads' holes holds: the next one sticks. */
export function holesOf(
  beads: number,
  { formOf, thread, strands, needle }: Pick<FillTask, 'formOf' | 'thread' | 'strands' | 'needle'>,
): Uint16Array {
  const holds = new Uint16Array(beads)
  const known = new Map<BeadForm, number>()
  for (let bead = 0; bead < beads; bead += 1) {
    const form = formOf(bead)
    let capacity = known.get(form)
    if (capacity === undefined) {
      capacity = holeCapacity(holeUse(form, { thread, strands }, needle)).value
      known.set(form, capacity)
    }
    holds[bead] = capacity
  }
  return holds
}

type Laid = Readonly<{ thread: Thread; strands: 1 | 2 }>

function holeUse(form: BeadForm, { thread, strands }: Laid, needle: Needle): HoleUse {
  return {
    holeMm: form.holeMm,
    threadMm: thread.diameterMm,
    needleMm: needle.wireMm,
    doubled: strands === 2,
  }
}

/** Warns of holes that are full, with what would make room: worked out from the tables, the smallest change first. */
export function fillWarnings(task: FillTask, { fill, holds }: HoleFill): readonly RouteWarning[] {
  const full: number[] = []
  let worst = -1
  let count = 0
  fill.forEach((code, bead) => {
    if (code !== CODES.full) return
    count += 1
    if (full.length < MAX_NAMED) full.push(bead)
    const over = (task.passes[bead] ?? 0) - (holds[bead] ?? 0)
    if (worst < 0 || over > (task.passes[worst] ?? 0) - (holds[worst] ?? 0)) worst = bead
  })
  if (worst < 0) return []
  const passes = task.passes[worst] ?? 0
  return [
    {
      code: 'hole-full',
      severity: 'warning',
      message: `${count} beads get more passes than their holes hold: up to ${passes}, and ${holds[worst]} go through.`,
      next: eitherOf(
        roomByWork(task, worst, holds[worst] ?? 0),
        fillAdvice(task, task.formOf(worst), passes),
      ),
      beads: full,
    },
  ]
}

/** Both pieces of advice in one, the work's first. */
function eitherOf(work: string, material: string): string {
  return work === ''
    ? material
    : `${work} Or ${material.charAt(0).toLowerCase()}${material.slice(1)}`
}

/** What of the work could go elsewhere, where that alone makes the passes fit: reinforcing, ends, ways woven. */
function roomByWork({ passes, events }: FillTask, bead: number, holds: number): string {
  const counts = passesByPurpose(events, bead)
  const over = (passes[bead] ?? 0) - holds
  if (counts.reinforce >= over) return 'Leave out the reinforcing passes there.'
  if (counts.finish >= over) return 'Weave the ends in elsewhere.'
  return counts.weave >= over ? 'Start from another row, so that less is woven through there.' : ''
}

function passesByPurpose({ kind, a, code, count }: EventList, bead: number) {
  const counts = { reinforce: 0, finish: 0, weave: 0 }
  for (let index = 0; index < count; index += 1) {
    if (kind[index] !== PASS || a[index] !== bead) continue
    const purpose = (code[index] ?? 0) >> 2
    if (purpose === REINFORCE) counts.reinforce += 1
    if (purpose === FINISH) counts.finish += 1
    if (purpose === WEAVE) counts.weave += 1
  }
  return counts
}

/**
 * The smallest change after which `passes` go through: a finer needle, else a thinner thread, else
 * both, else a doubled thread worked single.
 */
export function fillAdvice(
  { thread, strands, needle, tables }: Pick<FillTask, 'thread' | 'strands' | 'needle' | 'tables'>,
  form: BeadForm,
  passes: number,
): string {
  const finer = tables.needles
    .filter((other) => other.wireMm.value < needle.wireMm.value)
    .sort((a, b) => b.wireMm.value - a.wireMm.value)
  const thinner = tables.threads
    .filter((other) => other.diameterMm.value < thread.diameterMm.value)
    .sort((a, b) => sameKindFirst(a, b, thread) || b.diameterMm.value - a.diameterMm.value)
  const fits = (other: Thread, by: Needle, laid = strands) =>
    holeCapacity(holeUse(form, { thread: other, strands: laid }, by)).value >= passes
  const needleEnough = finer.find((other) => fits(thread, other))
  if (needleEnough !== undefined) return `Take a needle size ${needleEnough.size} for these passes.`
  const threadEnough = thinner.find((other) => fits(other, needle))
  if (threadEnough !== undefined) return `Take ${threadEnough.name}: ${passes} passes then fit.`
  const finest = finer.at(-1)
  const both = finest === undefined ? undefined : thinner.find((other) => fits(other, finest))
  if (both !== undefined && finest !== undefined) {
    return `Take ${both.name} and a needle size ${finest.size}.`
  }
  if (strands === 2 && fits(thread, needle, 1)) {
    return `Work with a single thread: ${passes} passes then fit.`
  }
  return 'No thread in the tables is thin enough: choose beads with wider holes or make fewer passes there.'
}

function sameKindFirst(a: Thread, b: Thread, thread: Thread): number {
  const rank = (other: Thread) => (other.construction === thread.construction ? 0 : 1)
  return rank(a) - rank(b)
}

/** A pass that finds its hole full: the event, and the bead. */
export type Stick = Readonly<{ event: number; bead: number }>

/**
 * Where in a route the needle first sticks: for each bead, the event whose pass is one more than its
 * hole holds. In order of work; used to warn at the bench when it matters.
 */
export function findSticks(events: EventList, holds: Uint16Array): readonly Stick[] {
  const { kind, a, b, pool } = events
  const passes = new Uint16Array(holds.length)
  const sticks: Stick[] = []
  const pass = (bead: number, event: number) => {
    const count = (passes[bead] ?? 0) + 1
    passes[bead] = count
    if (count === (holds[bead] ?? 0) + 1) sticks.push({ event, bead })
  }
  for (let event = 0; event < events.count; event += 1) {
    const from = a[event] ?? 0
    if (kind[event] === PASS) pass(from, event)
    if (kind[event] !== PICK_UP) continue
    for (let at = from; at < from + (b[event] ?? 0); at += 1) pass(pool[at] ?? 0, event)
  }
  return sticks
}
