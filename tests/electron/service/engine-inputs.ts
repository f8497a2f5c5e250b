import { referencePace } from '../../../shared-core/design/labour-pace.ts'

const FORM = 'cylinder-11/0'
const chart = {
  stitch: 'brick' as const,
  rows: [
    { start: 0, cells: '1A 2B' },
    { start: 1, cells: '2A' },
  ],
}
const weighings = [{ beads: 200, grossMg: 1_010, tareMg: 0, digitMg: 10 }]

/** Four pixels, red and blue over green and see-through, as bytes r, g, b, a. */
export const fourPixels = Buffer.from([
  ...[200, 30, 30, 255],
  ...[30, 30, 200, 255],
  ...[30, 160, 30, 255],
  ...[0, 0, 0, 0],
]).toString('base64')

/** An input that each engine call but `engine.read` accepts. */
export const engineInputs = {
  'engine.tables': {},
  'engine.calibrate': { formId: FORM, weighings },
  'engine.beadsToCount': { formId: FORM, accuracyPercent: 1, digitMg: 10 },
  'engine.countByWeight': { formId: FORM, weighings, grossMg: 6_010, tareMg: 1_000, digitMg: 10 },
  'engine.massOfCount': { formId: FORM, weighings, count: 480 },
  'engine.holeFill': {
    formId: FORM,
    threadId: 'braided-6lb',
    needleSize: '12',
    strands: 2,
    passes: 5,
  },
  'engine.learnPace': {
    sessions: [{ work: 'brick', beads: 240, rows: 12, units: 0, seconds: 2_400 }],
    prior: referencePace,
  },
  'engine.geometry': { chart, formId: FORM, threadId: 'braided-6lb' },
  'engine.writeWords': { chart, startRow: 0, startSide: 'left' },
  'engine.readWords': { stitch: 'brick', text: 'Row 1 (L): (1)A, (2)B\nRow 2 (R): (2)A\n' },
  'engine.outline': { kind: 'diamond', stitch: 'brick', size: { columns: 7, rows: 9 } },
  'engine.lab': { colours: ['#4b5a63'] },
  'engine.colourDifference': { pairs: [['#4b5a63', { l: 50, a: 2, b: -3 }]] },
  'engine.nearestBeads': {
    wanted: { id: 'slate', formId: FORM, colourHex: '#4b5a63', finish: 'matte' },
    candidates: [{ id: 'brine', formId: FORM, colourHex: '#2f6f82', finish: 'opaque' }],
  },
  'engine.picture': {
    picture: { rgbaBase64: fourPixels, width: 2, height: 2 },
    onto: { kind: 'block', stitch: 'square', columns: 2, rows: 2 },
    formId: FORM,
    fit: 'stretch',
    colours: { kind: 'free', count: 3 },
    dithering: 'none',
    smallestPatch: 1,
  },
} as const
