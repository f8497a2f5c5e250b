import type { BeadFinish } from '../../../shared-core/beads/bead-form.ts'

/** A supplier of the sample and how long it takes. */
export const sampleSuppliers = [
  { key: 'marlow', name: 'Marlow Bead Supply', leadDays: 4, note: 'Posts Monday to Thursday.' },
  { key: 'northgate', name: 'Northgate Findings', leadDays: 6, note: 'Sends nickel statements.' },
  { key: 'quayside', name: 'Quayside Threads', leadDays: 3, note: '' },
] as const

export type SampleSupplierKey = (typeof sampleSuppliers)[number]['key']

/** A lot: dye lot, quantity in the material's unit, days before the workshop's first day it was bought, what it cost in minor units. */
export type SampleLot = readonly [
  dyeLot: string,
  quantity: number,
  daysAgo: number,
  costMinor: number,
]

export type SampleMaterial = Readonly<{
  code: string
  name: string
  kind: 'bead' | 'thread' | 'finding' | 'packaging'
  formId: string | null
  colourHex: string | null
  finish: BeadFinish | null
  lowAt: number | null
  drawer: string
  supplier: SampleSupplierKey
  /** Pack quantity in the material's unit and its price in minor units. */
  pack: readonly [quantity: number, priceMinor: number]
  lots: readonly SampleLot[]
  declaration?: string
  note?: string
}>

type BeadFigures = Readonly<{
  code: string
  name: string
  hex: string
  finish: BeadFinish
  drawer: string
  priceMinor: number
  /** The last figure is what a pack cost then. */
  lots: readonly SampleLot[]
  note?: string
}>

const cylinder = (bead: BeadFigures): SampleMaterial => beadOf('cylinder-11/0', 7_200, 4_000, bead)
const small = (bead: BeadFigures): SampleMaterial =>
  beadOf('rocaille-japanese-15/0', 10_000, 2_000, bead)
const large = (bead: BeadFigures): SampleMaterial =>
  beadOf('rocaille-japanese-8/0', 25_000, 10_000, bead)

function beadOf(
  formId: string,
  packMg: number,
  lowAt: number,
  { hex, priceMinor, lots, ...bead }: BeadFigures,
): SampleMaterial {
  return {
    ...bead,
    kind: 'bead',
    formId,
    colourHex: hex,
    lowAt,
    supplier: 'marlow',
    pack: [packMg, priceMinor],
    lots: lots.map(([dyeLot, quantity, daysAgo, packPriceMinor]) => [
      dyeLot,
      quantity,
      daysAgo,
      Math.round((quantity * packPriceMinor) / packMg),
    ]),
  }
}

const piece = { formId: null, colourHex: null, finish: null } as const

/** What stands in the drawers of Saltmarsh Beadworks. Beads in mg, thread in mm, the rest in pieces. */
export const sampleMaterials: readonly SampleMaterial[] = [
  cylinder({
    code: 'WS-11',
    name: 'wet slate',
    hex: '#4b5a63',
    finish: 'matte',
    drawer: 'A1',
    priceMinor: 420,
    lots: [
      ['K17', 18_450, 294, 420],
      ['K22', 6_100, 158, 435],
    ],
    note: 'K22 is a little bluer.',
  }),
  cylinder({
    code: 'SM-11',
    name: 'samphire',
    hex: '#5f8f5a',
    finish: 'opaque',
    drawer: 'A2',
    priceMinor: 390,
    lots: [['C03', 22_800, 294, 390]],
  }),
  cylinder({
    code: 'OY-11',
    name: 'oyster shell',
    hex: '#e8dfd3',
    finish: 'gloss',
    drawer: 'A3',
    priceMinor: 460,
    lots: [['P11', 19_750, 227, 460]],
  }),
  cylinder({
    code: 'BR-11',
    name: 'brine',
    hex: '#2f6f82',
    finish: 'transparent',
    drawer: 'A4',
    priceMinor: 390,
    lots: [['T41', 31_200, 227, 390]],
  }),
  cylinder({
    code: 'RC-11',
    name: 'rust chain',
    hex: '#9a4a2b',
    finish: 'metallic',
    drawer: 'A5',
    priceMinor: 680,
    lots: [['M09', 9_050, 86, 680]],
    note: 'Try whether it rubs off before it goes into a bracelet.',
  }),
  cylinder({
    code: 'FG-11',
    name: 'fog',
    hex: '#b9c0c4',
    finish: 'opaque',
    drawer: 'A6',
    priceMinor: 390,
    lots: [['C19', 12_850, 316, 390]],
  }),
  cylinder({
    code: 'MB-11',
    name: 'mussel blue',
    hex: '#24304a',
    finish: 'gloss',
    drawer: 'A7',
    priceMinor: 420,
    lots: [['D02', 14_300, 120, 420]],
  }),
  cylinder({
    code: 'LA-11',
    name: 'lamp amber',
    hex: '#d08a2e',
    finish: 'lined',
    drawer: 'A8',
    priceMinor: 510,
    lots: [
      ['S71', 8_600, 64, 510],
      ['S80', 9_000, 12, 530],
    ],
  }),
  cylinder({
    code: 'CA-11',
    name: 'candle',
    hex: '#eeb65a',
    finish: 'transparent',
    drawer: 'A9',
    priceMinor: 450,
    lots: [['S15', 7_200, 64, 450]],
  }),
  cylinder({
    code: 'FL-11',
    name: 'first light',
    hex: '#fbe3a8',
    finish: 'iridescent',
    drawer: 'A10',
    priceMinor: 480,
    lots: [['S16', 6_900, 64, 480]],
  }),
  cylinder({
    code: 'TR-11',
    name: 'tar',
    hex: '#2b3138',
    finish: 'matte',
    drawer: 'A11',
    priceMinor: 390,
    lots: [['K30', 24_000, 158, 390]],
  }),
  cylinder({
    code: 'EG-11',
    name: 'eelgrass',
    hex: '#3f5d3a',
    finish: 'opaque',
    drawer: 'A12',
    priceMinor: 390,
    lots: [['C55', 21_400, 227, 390]],
  }),
  cylinder({
    code: 'RG-11',
    name: 'reed gold',
    hex: '#a9843f',
    finish: 'metallic',
    drawer: 'A13',
    priceMinor: 620,
    lots: [['M12', 5_300, 86, 620]],
  }),
  cylinder({
    code: 'SF-11',
    name: 'sandflat',
    hex: '#d8b98a',
    finish: 'matte',
    drawer: 'A14',
    priceMinor: 420,
    lots: [['K44', 10_800, 40, 420]],
  }),
  cylinder({
    code: 'HB-11',
    name: 'harrier brown',
    hex: '#8a5a3a',
    finish: 'gloss',
    drawer: 'A15',
    priceMinor: 420,
    lots: [['K47', 9_400, 40, 420]],
  }),
  cylinder({
    code: 'SH-11',
    name: 'shallows',
    hex: '#8fb3b5',
    finish: 'iridescent',
    drawer: 'A16',
    priceMinor: 470,
    lots: [['P20', 20_600, 120, 470]],
  }),
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
  {
    ...piece,
    code: 'EW-01',
    name: 'ear wire, steel',
    kind: 'finding',
    lowAt: 20,
    drawer: 'C1',
    supplier: 'northgate',
    pack: [20, 640],
    lots: [['', 108, 203, 3_456]],
    declaration: 'Supplier states nickel release below the limit of local rules.',
  },
  {
    ...piece,
    code: 'EW-02',
    name: 'ear wire, silver 925',
    kind: 'finding',
    lowAt: 10,
    drawer: 'C2',
    supplier: 'northgate',
    pack: [10, 1_800],
    lots: [['', 12, 203, 2_160]],
    declaration: 'Supplier states 925 silver, nickel free.',
  },
  {
    ...piece,
    code: 'ES-01',
    name: 'ear stud with pad, steel',
    kind: 'finding',
    lowAt: 12,
    drawer: 'C3',
    supplier: 'northgate',
    pack: [20, 780],
    lots: [['', 40, 120, 1_560]],
    declaration: 'Supplier states nickel release below the limit of local rules.',
  },
  {
    ...piece,
    code: 'CL-01',
    name: 'slide clasp, 16 mm',
    kind: 'finding',
    lowAt: 3,
    drawer: 'C4',
    supplier: 'northgate',
    pack: [5, 1_150],
    lots: [['', 9, 120, 2_070]],
    declaration: '',
  },
  {
    ...piece,
    code: 'CL-02',
    name: 'cuff ends, 30 mm',
    kind: 'finding',
    lowAt: 2,
    drawer: 'C5',
    supplier: 'northgate',
    pack: [2, 980],
    lots: [['', 6, 120, 2_940]],
    declaration: '',
  },
  {
    ...piece,
    code: 'CH-01',
    name: 'neck chain, 45 cm',
    kind: 'finding',
    lowAt: 3,
    drawer: 'C6',
    supplier: 'northgate',
    pack: [5, 2_400],
    lots: [['', 7, 120, 3_360]],
    declaration: 'Supplier states 925 silver, nickel free.',
  },
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
