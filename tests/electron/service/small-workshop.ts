import type { CallInput } from '../../../shared-core/contract/calls.ts'
import { openEmptyStudio, type Studio } from './open-studio.ts'

/** The least workshop that can sell something: two beads, a thread, an ear wire, one small design. */
export type SmallWorkshop = Readonly<{
  studio: Studio
  materials: Readonly<Record<'slate' | 'brine' | 'thread' | 'wire', string>>
  lots: Readonly<Record<'slate' | 'brine' | 'thread' | 'wire', string>>
  designId: string
  colourwayId: string
  placeId: string
  channelId: string
  supplierId: string
}>

type Fields = CallInput<'materials.save'>['material']

const PLAIN: Omit<Fields, 'code' | 'name' | 'kind' | 'formId'> = {
  colourHex: null,
  finish: null,
  lotsMatter: false,
  lowAt: null,
  tareMg: null,
  drawer: 'A1',
  note: '',
  declaration: '',
}

/** A pair of small brick triangles: 12 beads of A and 8 of B. */
export const smallBody: CallInput<'designs.save'>['body'] = {
  unitName: 'pair',
  palette: [
    { label: 'A', name: 'slate', formId: 'cylinder-11/0', colourHex: '#4b5a63', finish: 'matte' },
    { label: 'B', name: 'brine', formId: 'cylinder-11/0', colourHex: '#2f6f82', finish: 'opaque' },
  ],
  parts: [
    {
      kind: 'panel',
      id: 'panel',
      name: 'Triangle',
      chart: {
        stitch: 'brick',
        rows: [
          { start: 0, cells: '1A 2B 1A' },
          { start: 1, cells: '1A 1B 1A' },
          { start: 2, cells: '2A' },
          { start: 3, cells: '1B' },
        ],
      },
      formId: 'cylinder-11/0',
      copies: 2,
      mirrored: false,
      route: {},
    },
  ],
  extras: [{ id: 'wire', kind: 'finding', name: 'Ear wire', count: 2 }],
  threadId: 'braided-6lb',
  needleSize: '12',
}

/** Sets the small workshop up, each bead in one lot of 10 g for 5.00. */
export async function openSmallWorkshop(file?: string): Promise<SmallWorkshop> {
  const studio = await openEmptyStudio(file)
  const { ask } = studio
  const supplier = { name: 'Marlow Bead Supply', leadDays: 4, note: '' }
  const supplierId = (await ask('supplier.save', { supplier })).id
  const add = async (material: Fields, quantity: number, costMinor: number) => {
    const { id } = await ask('materials.save', { material })
    const lot = { dyeLot: 'K1', supplierId, boughtOn: '2026-10-01', note: '' }
    const { lotId } = await ask('lots.receive', { materialId: id, quantity, costMinor, ...lot })
    return { id, lotId }
  }
  const bead = { ...PLAIN, kind: 'bead', formId: 'cylinder-11/0', lotsMatter: true } as const
  const slate = await add({ ...bead, code: 'WS', name: 'wet slate' }, 10_000, 500)
  const brine = await add({ ...bead, code: 'BR', name: 'brine' }, 10_000, 500)
  const thread = await add(
    { ...PLAIN, kind: 'thread', formId: 'braided-6lb', code: 'TH', name: 'braided thread' },
    100_000,
    1_450,
  )
  const wire = await add(
    { ...PLAIN, kind: 'finding', formId: null, code: 'EW', name: 'ear wire' },
    40,
    1_280,
  )
  const design = await ask('designs.save', {
    name: 'Samphire studs',
    tags: [],
    body: smallBody,
    note: '',
  })
  const { colourways } = await ask('designs.read', { id: design.id })
  const colourwayId = colourways[0]?.id ?? ''
  const materials = { slate: slate.id, brine: brine.id, thread: thread.id, wire: wire.id }
  await ask('colourways.save', {
    designId: design.id,
    id: colourwayId,
    name: 'Slate and brine',
    materials: fillings(materials),
  })
  const { places, channels } = await ask('workshop.read', {})
  return {
    studio,
    materials,
    lots: { slate: slate.lotId, brine: brine.lotId, thread: thread.lotId, wire: wire.lotId },
    designId: design.id,
    colourwayId,
    placeId: places[0]?.id ?? '',
    channelId: channels[0]?.id ?? '',
    supplierId,
  }
}

/** Which material fills which key of the small design. */
export function fillings(materials: SmallWorkshop['materials']): Record<string, string> {
  return {
    'slot:A': materials.slate,
    'slot:B': materials.brine,
    thread: materials.thread,
    'extra:wire': materials.wire,
  }
}

/** An order for some units of the small design. */
export function orderFor(
  { designId, colourwayId }: SmallWorkshop,
  units: number,
): CallInput<'orders.save'>['order'] {
  return {
    customer: 'Ferry House Gifts',
    promisedOn: '2026-11-25',
    dueOn: '2026-12-04',
    note: '',
    lines: [{ designId, colourwayId, units, priceMinor: 1_900 }],
  }
}
