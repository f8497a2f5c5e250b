import type { BeadFinish } from '../../../shared-core/beads/bead-form.ts'
import type { DesignBody, Extra, Part, Strand } from '../../../shared-core/design/design.ts'
import { eelgrassLeaf } from './charts/eelgrass-leaf.ts'
import { lanternDrop } from './charts/lantern-drop.ts'
import { marshHarrier } from './charts/marsh-harrier.ts'
import { mudflatBand } from './charts/mudflat-band.ts'
import { reedbedTop } from './charts/reedbed-top.ts'
import { samphireStud } from './charts/samphire-stud.ts'
import { sluiceCuff } from './charts/sluice-cuff.ts'
import { tidewrackDiamond } from './charts/tidewrack-diamond.ts'
import { sampleMaterials } from './materials.ts'

/** A design of the sample with its colourways: each maps a key (`slot:A`, `extra:wire`, `thread`) to a material's code. */
export type SampleDesign = Readonly<{
  name: string
  tags: readonly string[]
  body: DesignBody
  colourways: readonly Readonly<{ name: string; materials: Readonly<Record<string, string>> }>[]
}>

const CYLINDER = 'cylinder-11/0'
const LARGE = 'rocaille-japanese-8/0'

const wires: Extra = { id: 'wire', kind: 'finding', name: 'Ear wire', count: 2 }
const card: Extra = { id: 'card', kind: 'packaging', name: 'Card', count: 1 }
const box: Extra = { id: 'box', kind: 'packaging', name: 'Box', count: 1 }

/** The palette that takes its look from the first colourway's beads, in order of the slots A, B, C ... */
function palette(codes: readonly string[], formIds: Readonly<Record<number, string>> = {}) {
  return codes.map((code, at) => {
    const bead = sampleMaterials.find((material) => material.code === code)
    return {
      label: String.fromCharCode(65 + at),
      name: bead?.name ?? '',
      formId: formIds[at] ?? bead?.formId ?? CYLINDER,
      colourHex: bead?.colourHex ?? '#888888',
      finish: bead?.finish ?? ('opaque' satisfies BeadFinish),
    }
  })
}

/** A colourway from its name, the slots' codes in order, and what else it needs. */
function colourway(name: string, codes: readonly string[], rest: Readonly<Record<string, string>>) {
  const slots = codes.map((code, at) => [`slot:${String.fromCharCode(65 + at)}`, code] as const)
  return { name, materials: { ...Object.fromEntries(slots), ...rest } }
}

function panel(name: string, chart: typeof reedbedTop, formId: string, copies: number): Part {
  return { kind: 'panel', id: 'panel', name, chart, formId, copies, mirrored: false, route: {} }
}

const earLoop = (row: number, bead: number, beads: string): Strand => ({
  kind: 'strand',
  id: 'loop',
  name: 'Ear loop',
  shape: 'loop',
  beads,
  findingId: 'wire',
  anchor: { panelId: 'panel', row, bead },
  copies: 1,
})

/** The eleven strands of the reedbed: longest in the middle, tipped with a small amber bead. */
const reeds: readonly Strand[] = Array.from({ length: 11 }, (_, bead) => {
  const depth = 8 + 2 * (5 - Math.abs(5 - bead))
  return {
    kind: 'strand',
    id: `reed${bead + 1}`,
    name: `Reed ${bead + 1}`,
    shape: 'fringe',
    beads: `${depth}B 3C 4D 2E 1F`,
    anchor: { panelId: 'panel', row: 9, bead },
    copies: 1,
  }
})

const base = { unitName: 'pair', threadId: 'braided-6lb', needleSize: '12' } as const
const smoke = { thread: 'TH-06' }
const crystal = { thread: 'TH-06C' }
const earrings = { 'extra:wire': 'EW-01', 'extra:card': 'CD-01' }

const REED = ['WS-11', 'EG-11', 'FG-11', 'RG-11', 'LA-11', 'LA-15']
const TIDE = ['WS-11', 'BR-11', 'OY-11', 'LA-11']
const LAMP = ['TR-11', 'RC-11', 'LA-11', 'CA-11', 'FL-11']
const HARRIER = ['TR-11', 'SM-11', 'FG-11', 'HB-11', 'OY-11', 'SF-11', 'EG-11']
const MUD = ['WS-11', 'BR-11', 'SF-11', 'OY-11']
const SLUICE = ['WS-11', 'MB-11', 'BR-11', 'SH-11', 'RC-11', 'OY-11']

/** The eight designs of Saltmarsh Beadworks, drawn for this studio. */
export const sampleDesigns: readonly SampleDesign[] = [
  {
    name: 'Tidewrack diamond earrings',
    tags: ['earrings', 'brick'],
    body: {
      ...base,
      palette: palette(TIDE),
      parts: [
        panel('Diamond', tidewrackDiamond, CYLINDER, 2),
        { ...earLoop(0, 0, '6A'), copies: 1 },
      ],
      extras: [wires, card],
    },
    colourways: [
      colourway('Wet slate and brine', TIDE, { ...smoke, ...earrings }),
      colourway('Mussel and candle', ['MB-11', 'SH-11', 'OY-11', 'CA-11'], {
        ...crystal,
        ...earrings,
      }),
    ],
  },
  {
    name: 'Reedbed fringe earrings',
    tags: ['earrings', 'brick', 'fringe'],
    body: {
      ...base,
      palette: palette(REED),
      parts: [panel('Reedbed', reedbedTop, CYLINDER, 2), ...reeds, earLoop(0, 0, '6A')],
      extras: [wires, card],
    },
    colourways: [colourway('Late summer', REED, { ...smoke, ...earrings })],
  },
  {
    name: 'Lantern drop earrings',
    tags: ['earrings', 'brick'],
    body: {
      ...base,
      palette: palette(LAMP),
      parts: [panel('Lantern', lanternDrop, CYLINDER, 2), earLoop(0, 1, '5A')],
      extras: [wires, card],
    },
    colourways: [
      colourway('Lamp lit', LAMP, { ...smoke, 'extra:wire': 'EW-02', 'extra:card': 'CD-01' }),
    ],
  },
  {
    name: 'Marsh harrier pendant',
    tags: ['pendant', 'brick'],
    body: {
      ...base,
      unitName: 'pendant',
      palette: palette(HARRIER),
      parts: [
        panel('Harrier', marshHarrier, CYLINDER, 1),
        { ...earLoop(0, 5, '14A'), name: 'Bail', findingId: 'chain' },
      ],
      extras: [{ id: 'chain', kind: 'finding', name: 'Neck chain', count: 1 }, box],
    },
    colourways: [
      colourway('Over the fog', HARRIER, {
        ...smoke,
        'extra:chain': 'CH-01',
        'extra:box': 'BX-01',
      }),
    ],
  },
  {
    name: 'Mudflat band',
    tags: ['bracelet', 'peyote'],
    body: {
      ...base,
      unitName: 'band',
      palette: palette(MUD),
      parts: [panel('Band', mudflatBand, CYLINDER, 1)],
      extras: [{ id: 'clasp', kind: 'finding', name: 'Slide clasp', count: 1 }, box],
    },
    colourways: [
      colourway('Ebb', MUD, { ...crystal, 'extra:clasp': 'CL-01', 'extra:box': 'BX-01' }),
      colourway('Night tide', ['MB-11', 'WS-11', 'SH-11', 'FG-11'], {
        ...smoke,
        'extra:clasp': 'CL-01',
        'extra:box': 'BX-01',
      }),
    ],
  },
  {
    name: 'Sluice cuff',
    tags: ['bracelet', 'loom'],
    body: {
      ...base,
      unitName: 'cuff',
      palette: palette(SLUICE),
      parts: [panel('Cuff', sluiceCuff, CYLINDER, 1)],
      extras: [{ id: 'ends', kind: 'finding', name: 'Cuff ends', count: 1 }, box],
      setUpS: 2_400,
      finishingS: 2_700,
    },
    colourways: [
      colourway('Gates open', SLUICE, { ...crystal, 'extra:ends': 'CL-02', 'extra:box': 'BX-01' }),
    ],
  },
  {
    name: 'Samphire studs',
    tags: ['earrings', 'brick', 'small'],
    body: {
      ...base,
      palette: palette(['SM-11', 'OY-11']),
      parts: [panel('Stud', samphireStud, CYLINDER, 2)],
      extras: [{ id: 'stud', kind: 'finding', name: 'Ear stud', count: 2 }, card],
    },
    colourways: [
      colourway('Green on shell', ['SM-11', 'OY-11'], {
        ...crystal,
        'extra:stud': 'ES-01',
        'extra:card': 'CD-01',
      }),
    ],
  },
  {
    name: 'Eelgrass kit',
    tags: ['kit', 'workshop', 'brick'],
    body: {
      ...base,
      unitName: 'kit',
      palette: palette(['EG-08', 'OY-08', 'SM-08']),
      parts: [panel('Leaf', eelgrassLeaf, LARGE, 2), earLoop(0, 0, '7B')],
      extras: [wires, { id: 'bag', kind: 'packaging', name: 'Kit bag', count: 1 }],
      needleSize: '10',
    },
    colourways: [
      colourway('Leaf', ['EG-08', 'OY-08', 'SM-08'], {
        ...smoke,
        'extra:wire': 'EW-01',
        'extra:bag': 'BG-01',
      }),
    ],
  },
]
