import type { BillKind } from '../../../shared-core/design/bill.ts'
import { extraKey, slotKey, threadKey, unitsFor } from '../../../shared-core/design/bill.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import { refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import type { Row } from '../store/database.ts'
import { getColourwayOf, getLatestVersion, listColourways, readBody } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import type { ActHandler } from './handler.ts'

export const saveColourway: ActHandler<'colourways.save'> = async (act, input) => {
  const design = await getRow(act.trx, 'design', input.designId, 'designId')
  const body = await readBody(act, (await getLatestVersion(act, design.id)).id)
  await checkFillings(act, body, input.materials)
  const id = input.id ?? act.newId('cw')
  if (input.id === undefined) {
    const before = await listColourways(act, design.id)
    await act.insert('colourway', {
      id,
      design_id: design.id,
      position: (before.at(-1)?.position ?? 0) + 1,
      name: input.name,
    })
  } else {
    const field = (name: string) => (name === 'designId' ? name : 'id')
    await getColourwayOf(act, { designId: design.id, colourwayId: id }, field)
    await act.update('colourway', id, { name: input.name })
  }
  await fill(act, id, input.materials)
  return { value: { id }, label: `Saved the colourway ${input.name} of ${design.name}` }
}

export const removeColourway: ActHandler<'colourways.remove'> = async (act, input) => {
  const { design, colourway } = await getColourwayOf(
    act,
    { designId: input.designId, colourwayId: input.id },
    (name) => (name === 'designId' ? name : 'id'),
  )
  if ((await listColourways(act, design.id)).length === 1) {
    refuse(
      'last-colourway',
      `${colourway.name} is the only colourway of ${design.name}.`,
      'Add another before you remove it, or put the whole design away.',
      'id',
    )
  }
  await refusePromised(act, colourway)
  await act.remove('colourway', colourway.id)
  return { value: {}, label: `Removed the colourway ${colourway.name} of ${design.name}` }
}

/** What is promised in a colourway must still find its beads. */
async function refusePromised(act: Act, { id, name }: Row<'colourway'>): Promise<void> {
  const lines = await act.trx
    .selectFrom('order_line')
    .innerJoin('sales_order', 'sales_order.id', 'order_line.order_id')
    .select('sales_order.customer')
    .distinct()
    .where('order_line.colourway_id', '=', id)
    .where('order_line.removed_by', 'is', null)
    .where('sales_order.removed_by', 'is', null)
    .where('sales_order.state', '=', 'open')
    .execute()
  if (lines.length === 0) return refuseAtBench(act, { id, name })
  refuse(
    'colourway-promised',
    `${name} is promised in ${lines.length === 1 ? 'an open order' : `${lines.length} open orders`}: ${lines
      .slice(0, 3)
      .map(({ customer }) => customer)
      .join(', ')}.`,
    'Finish or change what is promised in it first.',
    'id',
  )
}

/** Fills a colourway of a body that is being saved; refuses what does not fit its place. */
export async function fillColourway(
  act: Act,
  {
    colourwayId,
    body,
    materials,
  }: Readonly<{
    colourwayId: string
    body: DesignBody
    materials: Readonly<Record<string, string>>
  }>,
): Promise<void> {
  await checkFillings(act, body, materials)
  await fill(act, colourwayId, materials)
}

/** Work under way must still find its beads too. */
async function refuseAtBench(
  { trx }: Act,
  { id, name }: Pick<Row<'colourway'>, 'id' | 'name'>,
): Promise<void> {
  const work = await trx
    .selectFrom('bench_work')
    .select('id')
    .where('colourway_id', '=', id)
    .where('state', '=', 'open')
    .where('removed_by', 'is', null)
    .executeTakeFirst()
  if (work === undefined) return
  refuse(
    'colourway-at-bench',
    `${name} is being made at the bench.`,
    'Finish that work or give it up first.',
    'id',
  )
}

/** Makes the colourway's rows say what the input says, changing only what differs. */
async function fill(
  act: Act,
  colourwayId: string,
  materials: Readonly<Record<string, string>>,
): Promise<void> {
  const rows = await act.trx
    .selectFrom('colourway_material')
    .selectAll()
    .where('colourway_id', '=', colourwayId)
    .where('removed_by', 'is', null)
    .execute()
  const byKey = new Map(rows.map((row) => [row.key, row]))
  for (const row of rows) {
    if (!Object.hasOwn(materials, row.key)) await act.remove('colourway_material', row.id)
  }
  for (const [key, materialId] of Object.entries(materials)) {
    const row = byKey.get(key)
    if (row !== undefined) {
      await act.update('colourway_material', row.id, { material_id: materialId })
      continue
    }
    await act.insert('colourway_material', {
      id: act.newId('fill'),
      colourway_id: colourwayId,
      key,
      material_id: materialId,
    })
  }
}

async function checkFillings(
  act: Act,
  body: DesignBody,
  materials: Readonly<Record<string, string>>,
): Promise<void> {
  for (const [key, materialId] of Object.entries(materials)) {
    const field = `materials.${key}`
    const row = await getRow(act.trx, 'material', materialId, field)
    const place = placeOf(body, key)
    if (place === undefined) {
      refuse(
        'unknown-key',
        `The design has nothing called ${key}.`,
        `Fill one of ${keysOf(body).slice(0, 12).join(', ')}.`,
        field,
      )
    }
    refuseMisfit(row, place, field)
  }
}

type Place = Readonly<{ kind: BillKind; formId?: string; name: string }>

function placeOf(body: DesignBody, key: string): Place | undefined {
  if (key === threadKey) return { kind: 'thread', name: 'the thread' }
  const slot = body.palette.find(({ label }) => slotKey(label) === key)
  if (slot) return { kind: 'bead', formId: slot.formId, name: `slot ${slot.label}` }
  const extra = body.extras.find(({ id }) => extraKey(id) === key)
  return extra && { kind: extra.kind, name: extra.name }
}

function keysOf(body: DesignBody): readonly string[] {
  return [
    ...body.palette.map(({ label }) => slotKey(label)),
    threadKey,
    ...body.extras.map(({ id }) => extraKey(id)),
  ]
}

function refuseMisfit(row: Row<'material'>, place: Place, field: string): void {
  if (row.kind !== place.kind || !unitsFor(place.kind).includes(row.unit)) {
    refuse(
      'wrong-kind',
      `${row.name} is a ${row.kind}, and ${place.name} takes a ${place.kind}.`,
      `Choose a ${place.kind}.`,
      field,
    )
  }
  const otherForm =
    place.formId !== undefined && row.form_id !== null && row.form_id !== place.formId
  if (!otherForm) return
  refuse(
    'wrong-form',
    `${row.name} is a ${row.form_id}, and ${place.name} takes a ${place.formId}.`,
    `Choose a ${place.formId}, or change the slot’s form in the design.`,
    field,
  )
}
