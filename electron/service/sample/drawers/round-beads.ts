import { large, small } from '../sample-bead.ts'
import type { SampleMaterial } from '../sample-material.ts'

/** Round beads, the smaller ones first, in drawers B. */
export const roundBeads: readonly SampleMaterial[] = [
  small({
    code: 'LA-15',
    name: 'lamp amber, small',
    hex: '#d08a2e',
    finish: 'lined',
    drawer: 'B1',
    priceMinor: 510,
    lots: [['S77', 12_300, 86, 510]],
  }),
  small({
    code: 'FG-15',
    name: 'fog, small',
    hex: '#b9c0c4',
    finish: 'iridescent',
    drawer: 'B2',
    priceMinor: 490,
    lots: [['C21', 9_700, 86, 490]],
  }),
  large({
    code: 'EG-08',
    name: 'eelgrass, large',
    hex: '#3f5d3a',
    finish: 'opaque',
    drawer: 'B4',
    priceMinor: 560,
    lots: [['C55', 245_500, 418, 545]],
  }),
  large({
    code: 'SM-08',
    name: 'samphire, large',
    hex: '#5f8f5a',
    finish: 'transparent',
    drawer: 'B5',
    priceMinor: 560,
    lots: [['C58', 96_000, 200, 550]],
  }),
  large({
    code: 'OY-08',
    name: 'oyster shell, large',
    hex: '#e8dfd3',
    finish: 'gloss',
    drawer: 'B6',
    priceMinor: 590,
    lots: [['P02', 88_000, 200, 575]],
  }),
]
