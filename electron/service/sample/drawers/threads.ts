import { piece, type SampleMaterial } from '../sample-material.ts'

/** Threads, in drawers D. */
export const threads: readonly SampleMaterial[] = [
  {
    ...piece,
    code: 'TH-06',
    name: 'braided thread, smoke',
    kind: 'thread',
    formId: 'braided-6lb',
    colourHex: '#5c6468',
    lowAt: 25_000,
    drawer: 'D1',
    supplier: 'quayside',
    pack: [114_000, 1_450],
    lots: [['', 171_000, 203, 2_175]],
  },
  {
    ...piece,
    code: 'TH-06C',
    name: 'braided thread, crystal',
    kind: 'thread',
    formId: 'braided-6lb',
    colourHex: '#e4e6e6',
    lowAt: 25_000,
    drawer: 'D2',
    supplier: 'quayside',
    pack: [114_000, 1_450],
    lots: [
      ['', 62_000, 203, 789],
      ['', 57_000, 66, 725],
    ],
  },
]
