import { type LineGroup, lineGroups, type Manner } from '../route/line-groups.ts'
import type { BenchStep } from '../route/route.ts'
import { rowsOfGroup } from '../route/row-starts.ts'
import { lineEvents } from './line-events.ts'
import type { ReaderLine, ReaderLineKind } from './reader-script.ts'
import type { StretchSource } from './stretch-source.ts'
import { type Work, writeStep } from './write-step.ts'

/**
 * The lines of one part, in the order of work: one for each row from where it begins, one for each
 * change of thread, one for the ends. Every step stands in exactly one line.
 *
 * @param steps - The steps of the source's route.
 * @param ways - The same steps, told briefly.
 */
export function writeLines(
  source: StretchSource,
  steps: readonly BenchStep[],
  ways: readonly BenchStep[],
): readonly ReaderLine[] {
  const { route, words } = source
  const work: Work = { source, fromRight: false }
  let firstStep = 0
  let rows: readonly number[] = []
  return lineGroups(route, steps).map((group) => {
    const isContinued = group.manner === 'work' && group.row < 0 && rows.length > 0
    if (group.row >= 0) rows = rowsOfGroup(route, words, group)
    const line = writeLine(work, group, { firstStep, isContinued, rows, ways })
    firstStep += group.steps.length
    return line
  })
}

type Beginning = Readonly<{
  firstStep: number
  isContinued: boolean
  rows: readonly number[]
  ways: readonly BenchStep[]
}>

function writeLine(
  work: Work,
  group: LineGroup<BenchStep>,
  { firstStep, isContinued, rows, ways }: Beginning,
): ReaderLine {
  const { part, route, words, perBeadS, perRowS } = work.source
  const steps = group.steps.map((step, at) =>
    writeStep(work, step, ways[firstStep + at]?.text ?? ''),
  )
  const beads = steps.reduce((sum, step) => sum + step.beads.length, 0)
  const told = lineEvents(route, group.steps)
  const kind = kindOf(group.manner, part.kind, told.threadMm !== undefined)
  return {
    kind,
    rows: kind === 'row' ? rows : [],
    side: kind === 'row' ? (work.fromRight ? 'right' : 'left') : undefined,
    isContinued,
    firstStep,
    steps,
    ...told,
    isDoubled: words.isDoubled,
    holes: [],
    estimateS: beads * perBeadS + (group.row >= 0 ? perRowS : 0),
  }
}

function kindOf(manner: Manner, part: 'panel' | 'strand', hasThread: boolean): ReaderLineKind {
  if (manner === 'warp') return 'warp'
  if (manner === 'thread') return hasThread ? 'thread' : 'ends'
  return part === 'panel' ? 'row' : 'strand'
}
