import type { Chart, StitchKind } from '../../shared-core/chart/chart.ts'
import { toChartJson } from '../../shared-core/chart/chart-json.ts'
import { rowPhases } from '../../shared-core/chart/row-phase.ts'
import type { CallInput } from '../../shared-core/contract/calls.ts'

const LOOKS = [
  { label: 'A', name: 'slate', colourHex: '#2b3f4c' },
  { label: 'B', name: 'amber', colourHex: '#d08a2e' },
  { label: 'C', name: 'shell', colourHex: '#e9dfd0' },
] as const

/** One place of so many is a hole, where the drawing is small enough to be looked at place by place. */
const HOLES = { oneOf: 12, upTo: 1_000 }

/** A drawing in three colours, with holes, that is always the same for a seed. */
export function seededBody(
  stitch: StitchKind,
  { across, down }: Readonly<{ across: number; down: number }>,
  seed: number,
): CallInput<'designs.save'>['body'] {
  const chance = steps(seed)
  const hasHoles = across * down <= HOLES.upTo && stitch !== 'loom'
  const phaseOf = rowPhases({ stitch, rows: [{ start: 0, cells: Uint16Array.of(1) }] })
  const rows = Array.from({ length: down }, (_, row) => ({
    start: phaseOf(row),
    cells: Uint16Array.from({ length: across }, () =>
      hasHoles && chance(HOLES.oneOf) === 0 ? 0 : 1 + chance(LOOKS.length),
    ),
  }))
  const formId = 'cylinder-11/0'
  return {
    unitName: 'piece',
    palette: LOOKS.map((look) => ({ ...look, formId, finish: 'matte' })),
    parts: [
      {
        kind: 'panel',
        id: 'panel',
        name: 'Panel',
        chart: chartOf({ stitch, rows }),
        formId,
        copies: 1,
        mirrored: false,
        route: {},
      },
    ],
    extras: [],
    threadId: 'braided-6lb',
    needleSize: '12',
  }
}

/** The contract's type of the same shape. */
function chartOf(chart: Chart) {
  const { rows } = toChartJson(chart)
  return { stitch: chart.stitch, rows: rows.map((row) => ({ ...row })) }
}

/** Whole numbers below a limit, in an order that looks like chance and is the same for a seed. */
function steps(seed: number): (below: number) => number {
  let state = seed
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
}
