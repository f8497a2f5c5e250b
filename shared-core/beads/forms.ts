import { estimated } from '../units/spread.ts'
import type { BeadFamily, BeadForm } from './bead-form.ts'

/**
 * How well a reference form is known: found in several trade sources, in one, computed from its
 * dimensions and the density of glass, or only general trade knowledge (measure your own).
 */
export type FormEvidence = 'several-sources' | 'one-source' | 'computed' | 'trade-knowledge'

/** A form of the reference table; where `evidence` is weak the spreads are wide. */
export type ReferenceForm = BeadForm & Readonly<{ evidence: FormEvidence }>

type Range = readonly [low: number, value: number, high: number]
type Figures = Readonly<{ d: Range; l: Range; h: Range; perGram: Range; cull?: Range }>

/** Share of beads put aside, by kind of make; a supplier's own figure should replace it. */
const CYLINDER_CULL: Range = [0.01, 0.02, 0.03]
const JAPANESE_CULL: Range = [0.02, 0.04, 0.05]
const CZECH_CULL: Range = [0.05, 0.1, 0.15]

function form(
  id: string,
  family: BeadFamily,
  name: string,
  sizeLabel: string,
  evidence: FormEvidence,
  { d, l, h, perGram, cull = JAPANESE_CULL }: Figures,
): ReferenceForm {
  return {
    id,
    name,
    family,
    sizeLabel,
    diameterMm: estimated(...d),
    lengthMm: estimated(...l),
    holeMm: estimated(...h),
    beadsPerGram: estimated(...perGram),
    cullRate: estimated(...cull),
    evidence,
  }
}

type Row = readonly [size: string, evidence: FormEvidence, figures: Figures]

function sizes(
  idStem: string,
  family: BeadFamily,
  name: string,
  cull: Range,
  rows: readonly Row[],
) {
  return rows.map(([size, evidence, figures]) =>
    form(`${idStem}-${size}`, family, `${name} ${size}`, size, evidence, { cull, ...figures }),
  )
}

// Across the hole (d), along the hole (l), hole (h) in mm; beads per gram.
// biome-ignore format: a table reads best with a row a line
const cylinders = sizes('cylinder', 'cylinder', 'Cylinder bead', CYLINDER_CULL, [
  ['15/0', 'computed', { d: [1.25, 1.3, 1.35], l: [1.0, 1.05, 1.1], h: [0.6, 0.65, 0.7], perGram: [350, 380, 400] }],
  ['11/0', 'several-sources', { d: [1.55, 1.6, 1.65], l: [1.27, 1.3, 1.33], h: [0.75, 0.8, 0.85], perGram: [190, 200, 210] }],
  ['10/0', 'trade-knowledge', { d: [2.0, 2.1, 2.2], l: [1.6, 1.65, 1.7], h: [0.9, 0.95, 1.0], perGram: [78, 95, 110] }],
  ['8/0', 'trade-knowledge', { d: [2.9, 2.95, 3.0], l: [2.1, 2.3, 2.5], h: [1.1, 1.25, 1.4], perGram: [32, 34, 37] }],
])

// The 3/0's length and hole are scaled up from the 6/0: no measured figure was found.
// biome-ignore format: a table reads best with a row a line
const japaneseRounds = sizes('rocaille-japanese', 'rocaille', 'Japanese rocaille', JAPANESE_CULL, [
  ['15/0', 'several-sources', { d: [1.45, 1.5, 1.55], l: [1.05, 1.1, 1.15], h: [0.65, 0.7, 0.8], perGram: [250, 271, 290] }],
  ['11/0', 'several-sources', { d: [2.0, 2.1, 2.2], l: [1.45, 1.54, 1.6], h: [0.8, 0.85, 0.9], perGram: [105, 110, 120] }],
  ['8/0', 'several-sources', { d: [2.9, 3.0, 3.1], l: [2.1, 2.2, 2.3], h: [1.0, 1.05, 1.1], perGram: [34, 36, 38] }],
  ['6/0', 'several-sources', { d: [3.7, 3.9, 4.0], l: [2.6, 2.9, 3.2], h: [1.2, 1.4, 1.6], perGram: [13, 14, 15] }],
  ['3/0', 'one-source', { d: [5.2, 5.5, 5.8], l: [3.6, 4.0, 4.4], h: [1.6, 1.9, 2.2], perGram: [5, 5.5, 6] }],
])

// biome-ignore format: a table reads best with a row a line
const czechRounds = sizes('rocaille-czech', 'rocaille', 'Czech rocaille', CZECH_CULL, [
  ['13/0', 'one-source', { d: [1.5, 1.6, 1.7], l: [0.98, 1.02, 1.07], h: [0.5, 0.55, 0.6], perGram: [270, 300, 330] }],
  ['12/0', 'one-source', { d: [1.7, 1.8, 1.9], l: [1.1, 1.15, 1.2], h: [0.55, 0.6, 0.65], perGram: [190, 210, 230] }],
  ['11/0', 'several-sources', { d: [1.8, 2.1, 2.2], l: [1.3, 1.4, 1.5], h: [0.6, 0.7, 0.8], perGram: [105, 115, 125] }],
  ['10/0', 'several-sources', { d: [2.2, 2.3, 2.4], l: [1.5, 1.6, 1.7], h: [0.7, 0.8, 0.9], perGram: [80, 88, 95] }],
  ['8/0', 'one-source', { d: [2.9, 3.0, 3.1], l: [1.9, 2.05, 2.2], h: [0.9, 1.0, 1.1], perGram: [36, 40, 45] }],
  ['6/0', 'one-source', { d: [3.7, 3.9, 4.1], l: [2.5, 2.75, 3.0], h: [1.1, 1.3, 1.5], perGram: [12, 14, 16] }],
])

const SHORT_BUGLE = { d: [1.5, 1.6, 1.9], h: [0.6, 0.65, 0.8], cull: CZECH_CULL } as const
const BUGLE = { d: [1.5, 1.8, 2.1], h: [0.6, 0.75, 0.9], cull: CZECH_CULL } as const

// Beads per gram at 3, 6 and 12 mm are trade knowledge; the lengths between follow by mass per mm.
// biome-ignore format: a table reads best with a row a line
const bugles = [
  form('bugle-1', 'bugle', 'Bugle #1, 2 to 3 mm', '#1', 'trade-knowledge', { ...SHORT_BUGLE, l: [2, 2.5, 3], perGram: [70, 100, 125] }),
  form('bugle-2', 'bugle', 'Bugle #2, 4 to 5 mm', '#2', 'trade-knowledge', { ...SHORT_BUGLE, l: [4, 4.5, 5], perGram: [40, 54, 70] }),
  form('bugle-3', 'bugle', 'Bugle #3, 6 to 7 mm', '#3', 'trade-knowledge', { ...BUGLE, l: [6, 6.5, 7], perGram: [26, 35, 45] }),
  form('bugle-4', 'bugle', 'Bugle #4, 9 mm', '#4', 'trade-knowledge', { ...BUGLE, l: [8.5, 9, 9.5], perGram: [19, 24, 30] }),
  form('bugle-5', 'bugle', 'Bugle #5, 11 to 12 mm', '#5', 'trade-knowledge', { ...BUGLE, l: [11, 11.5, 12], perGram: [15, 18, 21] }),
]

// A two-hole bead's diameter is its width over both holes. A drop's length is that of its hole.
// biome-ignore format: a table reads best with a row a line
const others = [
  form('two-hole-tile-5', 'two-hole', 'Two-hole tile 5 x 5 mm', '5 x 5 mm', 'computed', { d: [4.9, 5, 5.1], l: [4.9, 5, 5.1], h: [0.7, 0.8, 0.9], perGram: [9, 10, 11] }),
  form('two-hole-half-tile-5', 'two-hole', 'Two-hole half tile 5 x 2.3 mm', '5 x 2.3 mm', 'trade-knowledge', { d: [4.9, 5, 5.1], l: [2.2, 2.3, 2.4], h: [0.7, 0.8, 0.9], perGram: [19, 20.5, 22] }),
  form('two-hole-twin-5', 'two-hole', 'Two-hole twin 5 x 2.5 mm', '5 x 2.5 mm', 'trade-knowledge', { d: [4.8, 5, 5.2], l: [2.3, 2.5, 2.7], h: [0.7, 0.75, 0.8], perGram: [20, 22, 25] }),
  form('drop-2.8', 'drop', 'Drop 2.8 mm', '2.8 mm', 'trade-knowledge', { d: [2.6, 2.8, 3.0], l: [2.2, 2.5, 2.8], h: [0.7, 0.8, 0.9], perGram: [45, 50, 55] }),
  form('drop-3.4', 'drop', 'Drop 3.4 mm', '3.4 mm', 'one-source', { d: [3.2, 3.4, 3.6], l: [2.7, 3.0, 3.4], h: [0.7, 0.8, 0.9], perGram: [19, 20, 21] }),
  form('cube-3', 'cube', 'Cube 3 mm', '3 mm', 'one-source', { d: [2.9, 3, 3.1], l: [2.9, 3, 3.1], h: [0.9, 0.95, 1.0], perGram: [16, 16.7, 17] }),
  form('faceted-2', 'faceted', 'Faceted bead 2 mm', '2 mm', 'several-sources', { d: [1.9, 2, 2.1], l: [2.0, 2.03, 2.1], h: [0.5, 0.6, 0.7], perGram: [85, 97, 110] }),
  form('faceted-3', 'faceted', 'Faceted bead 3 mm', '3 mm', 'several-sources', { d: [2.9, 3, 3.1], l: [2.99, 3.08, 3.18], h: [0.7, 0.75, 0.8], perGram: [28, 32, 36] }),
  form('faceted-4', 'faceted', 'Faceted bead 4 mm', '4 mm', 'several-sources', { d: [3.9, 4, 4.1], l: [4.0, 4.03, 4.06], h: [0.8, 0.9, 1.0], perGram: [12, 13, 14] }),
]

/**
 * The reference bead forms; every figure is `estimated` and carries its spread.
 *
 * Diameter across the hole, length along it and hole in mm; beads per gram; cull rate 0 to 1. A
 * workshop's own weighings and forms go before these.
 *
 * @source Shop size guides, calliper tests and kit lists, spreads wide enough to hold them; masses of the
 *   `computed` ones from pi/4 (d^2 - h^2) l x 2.5 g/cm^3 (soda-lime glass).
 */
export const beadForms: readonly ReferenceForm[] = [
  ...cylinders,
  ...japaneseRounds,
  ...czechRounds,
  ...bugles,
  ...others,
]
