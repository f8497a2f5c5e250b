import { sql } from 'kysely'
import { refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import type { KeptName } from '../store/database.ts'
import { getRow } from '../store/find-row.ts'
import { fromChannel, fromWorkshop, getWorkshop, listSuppliers } from '../store/workshop-rows.ts'
import type { ActHandler } from './handler.ts'

export const saveWorkshop: ActHandler<'workshop.save'> = async (act, { workshop }) => {
  const before = await getWorkshop(act.trx)
  if (workshop.costingMethod !== before.costingMethod) await refuseOtherCosting(act)
  await act.update('workshop', 'workshop', fromWorkshop(workshop))
  return { value: {}, label: 'Saved the workshop’s figures' }
}

/** What went out at one method's cost cannot go on at another's: the value of the stock would not add up. */
async function refuseOtherCosting({ trx }: Act): Promise<void> {
  const issue = await trx
    .selectFrom('stock_movement as line')
    .leftJoin('stock_movement as turn', 'turn.head_id', 'line.id')
    .select('line.id')
    .where('line.head_id', 'is', null)
    .where('line.quantity', '<', 0)
    .groupBy('line.id')
    // Taken back an odd number of times, a line does not stand.
    .having(sql<boolean>`count(turn.id) % 2 = 0`)
    .limit(1)
    .executeTakeFirst()
  if (issue === undefined) return
  refuse(
    'costing-method-in-use',
    'Materials have gone out of stock at the cost of the present method.',
    'Keep the method: it is chosen once, before the first make.',
    'workshop.costingMethod',
  )
}

export const saveChannel: ActHandler<'channel.save'> = async (act, { channel }) => {
  await getWorkshop(act.trx)
  const { id, ...fields } = channel
  const row = fromChannel(fields)
  if (id !== undefined) {
    await getRow(act.trx, 'channel', id, 'channel.id')
    await act.update('channel', id, row)
    return { value: { id }, label: `Saved the channel ${channel.name}` }
  }
  const added = act.newId('ch')
  await act.insert('channel', { id: added, position: await nextPosition(act, 'channel'), ...row })
  return { value: { id: added }, label: `Added the channel ${channel.name}` }
}

export const savePlace: ActHandler<'place.save'> = async (act, { place }) => {
  await getWorkshop(act.trx)
  const { id, name, channelId } = place
  if (channelId !== null) await getRow(act.trx, 'channel', channelId, 'place.channelId')
  const row = { name, channel_id: channelId }
  if (id !== undefined) {
    await getRow(act.trx, 'place', id, 'place.id')
    await act.update('place', id, row)
    return { value: { id }, label: `Saved the place ${name}` }
  }
  const added = act.newId('pla')
  await act.insert('place', { id: added, position: await nextPosition(act, 'place'), ...row })
  return { value: { id: added }, label: `Added the place ${name}` }
}

export const saveSupplier: ActHandler<'supplier.save'> = async (act, { supplier }) => {
  await getWorkshop(act.trx)
  const { id, name, leadDays, note } = supplier
  await refuseDoubleName(act, name, id)
  const row = { name, lead_days: leadDays, note }
  if (id !== undefined) {
    await getRow(act.trx, 'supplier', id, 'supplier.id')
    await act.update('supplier', id, row)
    return { value: { id }, label: `Saved the supplier ${name}` }
  }
  const added = act.newId('sup')
  await act.insert('supplier', { id: added, ...row })
  return { value: { id: added }, label: `Added the supplier ${name}` }
}

/** Stock files name suppliers by their names, so no two may share one. */
async function refuseDoubleName(act: Act, name: string, id: string | undefined): Promise<void> {
  const suppliers = await listSuppliers(act.trx)
  const twin = suppliers.find((one) => sameName(one.name, name) && one.id !== id)
  if (twin === undefined) return
  refuse(
    'name-taken',
    `There is a supplier ${twin.name} already.`,
    'Save that one, or give this one another name.',
    'supplier.name',
  )
}

function sameName(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase()
}

async function nextPosition(act: Act, table: 'channel' | 'place'): Promise<number> {
  const row = await act.trx
    .selectFrom(table satisfies KeptName)
    .select(({ fn }) => fn.max('position').as('last'))
    .executeTakeFirst()
  return (row?.last ?? 0) + 1
}
