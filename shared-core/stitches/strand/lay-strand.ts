import { AROUND_BEAD, DOWN, REINFORCE, STITCH, UP, WEAVE } from '../../route/event-codes.ts'
import {
  carryFinding,
  type EventWriter,
  join,
  knot,
  pass,
  pickUp,
  pickUpAlso,
  turn,
} from '../../route/event-writer.ts'
import type { HoleEnd } from '../../route/find-weave.ts'

/** The panel a strand hangs from: where the thread leaves it and comes back, and how it gets there. */
export type Hanging = Readonly<{
  panelId: string
  /** Passes of the panel's beads that bring the thread to the strand; the last leaves the panel. */
  way: readonly HoleEnd[]
  /** The pass that takes the thread back into the panel. */
  back: HoleEnd
  /** Passes that bring the thread round to the strand again, for a loop's further rounds. */
  again: readonly HoleEnd[]
}>

/** One strand to lay: its beads, shape, finding, the rounds of a loop, and what it hangs from. */
export type StrandTask = Readonly<{
  beads: number
  shape: 'fringe' | 'loop'
  findingId: string | undefined
  rounds: number
  hanging: Hanging | undefined
}>

/**
 * Lays one strand.
 *
 * Fringe: down through all beads, round the last (the turn bead) or through the finding, back up
 * through the others. Loop: out through its beads with the finding at its middle, back into the
 * panel, and round again as often as asked.
 */
export function layStrand(writer: EventWriter, task: StrandTask): void {
  const { hanging, beads } = task
  for (const end of hanging?.way ?? []) join(writer, hanging?.panelId ?? '', end, WEAVE)
  if (beads === 0) return
  if (task.shape === 'fringe') layFringe(writer, task)
  else layLoop(writer, task)
}

function layFringe(writer: EventWriter, { beads, findingId, hanging }: StrandTask): void {
  pickUp(writer, 0, DOWN)
  for (let bead = 1; bead < beads; bead += 1) pickUpAlso(writer, bead, DOWN)
  const last = beads - 1
  if (findingId !== undefined) carryFinding(writer, findingId)
  else turn(writer, AROUND_BEAD, last)
  // A turn bead is passed once: it lies across below the others. A finding turns the thread itself.
  for (let bead = findingId === undefined ? last - 1 : last; bead >= 0; bead -= 1) {
    pass(writer, bead, UP, STITCH)
  }
  if (hanging === undefined) knot(writer, 0)
  else join(writer, hanging.panelId, hanging.back, STITCH)
}

function layLoop(writer: EventWriter, task: StrandTask): void {
  const { beads, findingId, rounds, hanging } = task
  const middle = Math.floor(beads / 2)
  if (findingId !== undefined && middle === 0) carryFinding(writer, findingId)
  pickUp(writer, 0, DOWN)
  for (let bead = 1; bead < beads; bead += 1) {
    if (bead === middle && findingId !== undefined) {
      carryFinding(writer, findingId)
      pickUp(writer, bead, bead < middle ? DOWN : UP)
    } else {
      pickUpAlso(writer, bead, bead < middle ? DOWN : UP)
    }
  }
  closeLoop(writer, hanging)
  for (let round = 1; round < rounds; round += 1) {
    for (const end of hanging?.again ?? []) join(writer, hanging?.panelId ?? '', end, REINFORCE)
    for (let bead = 0; bead < beads; bead += 1) {
      if (bead === middle && findingId !== undefined) carryFinding(writer, findingId)
      pass(writer, bead, bead < middle || bead === 0 ? DOWN : UP, REINFORCE)
    }
    closeLoop(writer, hanging)
  }
}

function closeLoop(writer: EventWriter, hanging: Hanging | undefined): void {
  if (hanging === undefined) knot(writer, 0)
  else join(writer, hanging.panelId, hanging.back, STITCH)
}
