import { piece, type SampleMaterial } from '../sample-material.ts'

/** Packaging, in drawers E. */
export const packaging: readonly SampleMaterial[] = [
  {
    ...piece,
    code: 'CD-01',
    name: 'card, small, kraft',
    kind: 'packaging',
    lowAt: 25,
    drawer: 'E1',
    supplier: 'northgate',
    pack: [100, 900],
    lots: [['', 140, 203, 1_260]],
  },
  {
    ...piece,
    code: 'BX-01',
    name: 'box, flat',
    kind: 'packaging',
    lowAt: 10,
    drawer: 'E2',
    supplier: 'northgate',
    pack: [25, 1_750],
    lots: [['', 31, 203, 2_170]],
  },
  {
    ...piece,
    code: 'BG-01',
    name: 'kit bag, paper',
    kind: 'packaging',
    lowAt: 12,
    drawer: 'E3',
    supplier: 'northgate',
    pack: [50, 700],
    lots: [['', 44, 203, 616]],
  },
]
