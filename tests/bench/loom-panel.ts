import type { CallInput } from '../../shared-core/contract/calls.ts'

const looks = ['#465a66', '#2f7d8c', '#e9dfd0', '#d08a2e', '#6a9a55', '#9a4a2b'] as const

/** A loom panel to save: so many beads in six colours, in no order that repeats by rows. */
export function loomPanel(beads: number, columns: number): CallInput<'designs.save'> {
  const letters = looks.map((_, at) => String.fromCharCode(65 + at))
  const rows = Array.from({ length: Math.ceil(beads / columns) }, (_, row) => {
    const cells = Array.from(
      { length: Math.min(columns, beads - row * columns) },
      (_, at) => `1${letters[(at * 7 + row * 3) % looks.length]}`,
    )
    return { start: 0, cells: cells.join(' ') }
  })
  return {
    name: `Panel of ${beads} beads`,
    tags: [],
    note: '',
    body: {
      unitName: 'piece',
      palette: looks.map((colourHex, at) => ({
        label: letters[at] ?? 'A',
        name: `colour ${at + 1}`,
        formId: 'cylinder-11/0',
        colourHex,
        finish: 'matte',
      })),
      parts: [
        {
          kind: 'panel',
          id: 'panel',
          name: 'Panel',
          chart: { stitch: 'loom', rows },
          formId: 'cylinder-11/0',
          copies: 1,
          mirrored: false,
          route: {},
        },
      ],
      extras: [],
      threadId: 'braided-6lb',
      needleSize: '12',
    },
  }
}
