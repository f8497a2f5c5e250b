import { benchSteps } from '../route/bench-steps.ts'
import type { BenchStep } from '../route/route.ts'
import { type HoleEvent, type HoleTally, holeEvents } from './hole-notes.ts'
import type { HoleNote, ReaderLine, ReaderStretch } from './reader-script.ts'
import type { StretchSource } from './stretch-source.ts'
import { writeLines } from './write-lines.ts'

type Holes = Readonly<{
  own: HoleTally
  joined: Readonly<{ tally: HoleTally; drawnBead: (bead: number) => number }> | undefined
}>

/** One part's lines, each with what happens to holes in it. The tallies are counted on. */
export function writeStretch(source: StretchSource, { own, joined }: Holes): ReaderStretch {
  const { route, words, drawnBead, nameOf } = source
  const steps = benchSteps(route, words)
  const ways = benchSteps(route, { ...words, letterOf: nameOf, isBrief: true })
  const events = holeEvents(route, { tally: own, drawnBead }, joined)
  const lines = withHoles(writeLines(source, steps, ways), notesOf(steps, events))
  return { ...source.part, steps: steps.length, lines }
}

/** The notes by step; both lists are in order of work. */
function notesOf(steps: readonly BenchStep[], events: readonly HoleEvent[]): readonly HoleNote[] {
  let step = 0
  return events.map(({ event, ...note }) => {
    while ((steps[step]?.toEvent ?? Number.POSITIVE_INFINITY) < event) step += 1
    return { ...note, step }
  })
}

function withHoles(
  lines: readonly ReaderLine[],
  notes: readonly HoleNote[],
): readonly ReaderLine[] {
  if (notes.length === 0) return lines
  return lines.map((line) => {
    const end = line.firstStep + line.steps.length
    return { ...line, holes: notes.filter(({ step }) => step >= line.firstStep && step < end) }
  })
}
