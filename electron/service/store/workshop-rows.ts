import type { Transaction } from 'kysely'
import type { z } from 'zod'
import type {
  channel as channelShape,
  place as placeShape,
  supplier as supplierShape,
  workshop as workshopShape,
} from '../../../shared-core/contract/workshop-calls.ts'
import { refuse } from '../refused.ts'
import type { Database, Row } from './database.ts'

export type Workshop = z.output<typeof workshopShape>
export type Channel = z.output<typeof channelShape>
export type Place = z.output<typeof placeShape>
export type Supplier = z.output<typeof supplierShape>

/** The workshop's figures, or nothing before the first choice. */
export async function findWorkshop(trx: Transaction<Database>): Promise<Workshop | undefined> {
  const row = await trx.selectFrom('workshop').selectAll().executeTakeFirst()
  return row && toWorkshop(row)
}

/** The workshop's figures; refused before there is a workshop. */
export async function getWorkshop(trx: Transaction<Database>): Promise<Workshop> {
  return (
    (await findWorkshop(trx)) ??
    refuse('no-workshop', 'There is no workshop yet.', 'Begin one first, empty or with the sample.')
  )
}

export async function listChannels(trx: Transaction<Database>): Promise<Channel[]> {
  const rows = await trx
    .selectFrom('channel')
    .selectAll()
    .where('removed_by', 'is', null)
    .orderBy('position')
    .execute()
  return rows.map(toChannel)
}

export async function listPlaces(trx: Transaction<Database>): Promise<Place[]> {
  const rows = await trx
    .selectFrom('place')
    .selectAll()
    .where('removed_by', 'is', null)
    .orderBy('position')
    .execute()
  return rows.map((row) => ({ id: row.id, name: row.name, channelId: row.channel_id }))
}

export async function listSuppliers(trx: Transaction<Database>): Promise<Supplier[]> {
  const rows = await trx
    .selectFrom('supplier')
    .selectAll()
    .where('removed_by', 'is', null)
    .orderBy('name')
    .orderBy('id')
    .execute()
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    leadDays: row.lead_days,
    note: row.note,
  }))
}

function toWorkshop(row: Row<'workshop'>): Workshop {
  return {
    name: row.name,
    currency: row.currency,
    decimalMark: row.decimal_mark,
    hourlyRateMinor: row.hourly_rate_minor,
    overhead: toOverhead(row),
    costingMethod: row.costing_method,
    marginPercent: row.margin_percent,
    priceStepMinor: row.price_step_minor,
    scaleResolutionMg: row.scale_resolution_mg,
    tagMaker: row.tag_maker,
    tagCare: row.tag_care,
    tagCaution: row.tag_caution,
  }
}

function toOverhead(row: Row<'workshop'>): Workshop['overhead'] {
  const { overhead_kind: kind, overhead_percent: percent, overhead_minor: amountMinor } = row
  return kind === 'percent-of-labour'
    ? { kind, percent: percent ?? '0' }
    : { kind, amountMinor: amountMinor ?? 0 }
}

/** A workshop's figures as columns. */
export function fromWorkshop(workshop: Omit<Workshop, 'currency'>) {
  const { overhead } = workshop
  return {
    name: workshop.name,
    decimal_mark: workshop.decimalMark,
    hourly_rate_minor: workshop.hourlyRateMinor,
    overhead_kind: overhead.kind,
    overhead_percent: overhead.kind === 'percent-of-labour' ? overhead.percent : null,
    overhead_minor: overhead.kind === 'percent-of-labour' ? null : overhead.amountMinor,
    costing_method: workshop.costingMethod,
    margin_percent: workshop.marginPercent,
    price_step_minor: workshop.priceStepMinor,
    scale_resolution_mg: workshop.scaleResolutionMg,
    tag_maker: workshop.tagMaker,
    tag_care: workshop.tagCare,
    tag_caution: workshop.tagCaution,
  }
}

export function toChannel(row: Row<'channel'>): Channel {
  return {
    id: row.id,
    name: row.name,
    kind: row.kind,
    feePercent: row.fee_percent,
    feeFixedMinor: row.fee_fixed_minor,
    paymentPercent: row.payment_percent,
    paymentFixedMinor: row.payment_fixed_minor,
    feesOn: row.fees_on,
    taxPercent: row.tax_percent,
    taxIncluded: row.tax_included === 1,
  }
}

/** A channel as columns. */
export function fromChannel(channel: Omit<Channel, 'id'>) {
  return {
    name: channel.name,
    kind: channel.kind,
    fee_percent: channel.feePercent,
    fee_fixed_minor: channel.feeFixedMinor,
    payment_percent: channel.paymentPercent,
    payment_fixed_minor: channel.paymentFixedMinor,
    fees_on: channel.feesOn,
    tax_percent: channel.taxPercent,
    tax_included: channel.taxIncluded ? (1 as const) : (0 as const),
  }
}
