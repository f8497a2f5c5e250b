import { slotLabel } from '../../shared-core/chart/chart.ts'
import type { CallInput } from '../../shared-core/contract/calls.ts'
import { designOf, panelOf } from '../shared-core/design/a-design.ts'

const looks = ['#465a66', '#2f7d8c', '#e9dfd0', '#d08a2e', '#6a9a55', '#9a4a2b'] as const

/** A loom panel to save: so many beads in six colours, in no order that repeats by rows. */
export function loomPanel(beads: number, columns: number): CallInput<'designs.save'> {
  const rows = Array.from({ length: Math.ceil(beads / columns) }, (_, row) => ({
    start: 0,
    cells: Uint16Array.from(
      { length: Math.min(columns, beads - row * columns) },
      (__, at) => 1 + ((at * 7 + row * 3) % looks.length),
    ),
  }))
  const palette = looks.map((colourHex, at) => {
    const name = `colour ${at + 1}`
    return {
      label: slotLabel(at),
      name,
      formId: 'cylinder-11/0',
      colourHex,
      finish: 'matte',
    } as const
  })
  const body = designOf([panelOf({ stitch: 'loom', rows })], { palette })
  return {
    ...{ name: `Panel of ${beads} beads`, tags: [], note: '' },
    body: body as CallInput<'designs.save'>['body'],
  }
}
