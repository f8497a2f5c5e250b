import type { ParsedInput } from '../../../shared-core/contract/calls.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import { type SampleDesign, sampleDesigns } from './designs.ts'
import { sampleMaterials } from './materials.ts'
import type { SampleMaterial } from './sample-material.ts'
import { sampleChannels, sampleFigures, samplePlaces } from './settings.ts'
import { sampleSuppliers } from './suppliers.ts'
import type { Teller } from './teller.ts'

/** Ids of what the sample is made of, by its own keys, codes and names. */
export type SampleIds = Readonly<{
  channels: ReadonlyMap<string, string>
  places: ReadonlyMap<string, string>
  suppliers: ReadonlyMap<string, string>
  materials: ReadonlyMap<string, string>
  designs: ReadonlyMap<string, string>
  /** By design and colourway, joined by a line break. */
  colourways: ReadonlyMap<string, string>
}>

/** Before anything else happened. */
const FIRST_DAY = 420
const DESIGNS_DAY = 198

/** Sets up channels, places, suppliers, materials and designs; lots come in on their own days. */
export async function setUpSample(teller: Teller): Promise<SampleIds> {
  const { view, tell } = teller
  const { name: _, currency: __, ...chosen } = await getWorkshop(view.trx)
  const { name } = await getWorkshop(view.trx)
  const figures = { ...chosen, ...sampleFigures, name }
  await tell(FIRST_DAY, 'workshop.save', {
    workshop: { ...figures, decimalMark: chosen.decimalMark },
  })
  const channels = new Map<string, string>()
  for (const { key, ...channel } of sampleChannels) {
    channels.set(key, (await tell(FIRST_DAY, 'channel.save', { channel })).id)
  }
  const places = new Map<string, string>()
  for (const { key, name, channel } of samplePlaces) {
    const channelId = channel === null ? null : (channels.get(channel) ?? null)
    places.set(key, (await tell(FIRST_DAY, 'place.save', { place: { name, channelId } })).id)
  }
  const suppliers = new Map<string, string>()
  for (const { key, ...supplier } of sampleSuppliers) {
    suppliers.set(key, (await tell(FIRST_DAY, 'supplier.save', { supplier })).id)
  }
  const materials = new Map<string, string>()
  for (const material of sampleMaterials) {
    materials.set(material.code, await addMaterial(teller, material, suppliers))
  }
  return { channels, places, suppliers, materials, ...(await addDesigns(teller, materials)) }
}

async function addMaterial(
  { tell }: Teller,
  material: SampleMaterial,
  suppliers: ReadonlyMap<string, string>,
): Promise<string> {
  const { code, name, kind, formId, colourHex, finish, lowAt, drawer } = material
  const day = Math.max(...material.lots.map(([, , daysAgo]) => daysAgo))
  const { id } = await tell(day, 'materials.save', {
    material: {
      ...{ code, name, kind, formId, colourHex, finish, lowAt, drawer },
      lotsMatter: kind === 'bead',
      tareMg: kind === 'bead' ? 2_110 : null,
      note: material.note ?? '',
      declaration: material.declaration ?? '',
    },
  })
  const supplierId = suppliers.get(material.supplier) ?? ''
  const [packQuantity, priceMinor] = material.pack
  const offer = { materialId: id, supplierId, packQuantity, priceMinor }
  await tell(day, 'offers.save', { offer })
  return id
}

async function addDesigns(teller: Teller, materials: ReadonlyMap<string, string>) {
  const designs = new Map<string, string>()
  const colourways = new Map<string, string>()
  for (const design of sampleDesigns) {
    const { id } = await teller.tell(DESIGNS_DAY, 'designs.save', {
      name: design.name,
      tags: [...design.tags],
      body: design.body as ParsedInput<'designs.save'>['body'],
      note: '',
    })
    designs.set(design.name, id)
    for (const [at, colourway] of design.colourways.entries()) {
      const saved = await addColourway(
        teller,
        { designId: id, colourway, isFirst: at === 0 },
        materials,
      )
      colourways.set(`${design.name}\n${colourway.name}`, saved)
    }
  }
  return { designs, colourways }
}

type NewColourway = Readonly<{
  designId: string
  colourway: SampleDesign['colourways'][number]
  isFirst: boolean
}>

/** The first colourway takes the place of the one every new design has. */
async function addColourway(
  { view, tell }: Teller,
  { designId, colourway, isFirst }: NewColourway,
  materials: ReadonlyMap<string, string>,
): Promise<string> {
  const first = await view.trx
    .selectFrom('colourway')
    .select('id')
    .where('design_id', '=', designId)
    .executeTakeFirstOrThrow()
  const filled = Object.entries(colourway.materials).map(([key, code]) => {
    const id = materials.get(code)
    if (id === undefined) throw new Error(`the sample has a material ${code}`)
    return [key, id] as const
  })
  const saved = await tell(DESIGNS_DAY, 'colourways.save', {
    designId,
    ...(isFirst ? { id: first.id } : {}),
    name: colourway.name,
    materials: Object.fromEntries(filled),
  })
  return saved.id
}
