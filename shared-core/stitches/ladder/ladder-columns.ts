import type { BeadIndex } from '../../chart/bead-index.ts'
import type { RouteWarning } from '../../route/route.ts'

/** The stacks of a ladder from the left, each from the top, and the beads that stand apart from them. */
export type LadderColumns = Readonly<{
  columns: readonly (readonly number[])[]
  warnings: readonly RouteWarning[]
}>

/** Groups a chart's beads into columns side by side; of several groups apart the one with most beads is kept, of equal ones that at the start side. */
export function ladderColumns(
  index: BeadIndex,
  startSide: 'left' | 'right' = 'left',
): LadderColumns {
  const byAt = new Map<number, number[]>()
  for (let bead = 0; bead < index.count; bead += 1) {
    const at = index.atOf[bead] ?? 0
    const stack = byAt.get(at)
    if (stack === undefined) byAt.set(at, [bead])
    else stack.push(bead)
  }
  const groups = groupSideBySide(byAt)
  if (startSide === 'right') groups.reverse()
  const [columns = [], ...apart] = groups.sort((a, b) => beadsIn(b) - beadsIn(a))
  const lost = apart.flat(2)
  return { columns, warnings: lost.length === 0 ? [] : [floating(lost)] }
}

function groupSideBySide(byAt: ReadonlyMap<number, number[]>): number[][][] {
  const groups: number[][][] = []
  let end = Number.NEGATIVE_INFINITY
  for (const at of [...byAt.keys()].sort((a, b) => a - b)) {
    const stack = byAt.get(at) ?? []
    if (at === end + 2) groups.at(-1)?.push(stack)
    else groups.push([stack])
    end = at
  }
  return groups
}

function beadsIn(columns: readonly (readonly number[])[]): number {
  return columns.reduce((sum, stack) => sum + stack.length, 0)
}

function floating(beads: readonly number[]): RouteWarning {
  return {
    code: 'floating-beads',
    severity: 'impossible',
    message: `${beads.length} beads touch no bead of the rest, so no thread reaches them.`,
    next: 'Join them with beads between, or make them a panel of their own.',
    beads: beads.slice(0, 500),
  }
}
