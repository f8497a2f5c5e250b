import { slotKey } from '../../../shared-core/design/bill.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import { getLatestVersion, listColourways, readBody } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import type { View } from '../store/view.ts'
import type { QueryHandler } from './handler.ts'

/** The contract's shapes: the same, but their lists may be changed. */
type Drawing = Awaited<ReturnType<QueryHandler<'designs.drawing'>>>
type Look = Drawing['looks'][number]

export const readDrawing: QueryHandler<'designs.drawing'> = async (reading, { id }) => {
  const design = await getRow(reading.trx, 'design', id)
  const version = await getLatestVersion(reading, design.id)
  const body = await readBody(reading, version.id)
  return {
    versionId: version.id,
    body: body as Drawing['body'],
    looks: await looksOf(reading, design.id, body),
  }
}

async function looksOf(view: View, designId: string, body: DesignBody): Promise<Look[]> {
  const [first] = await listColourways(view, designId)
  const rows = await view.trx
    .selectFrom('colourway_material')
    .innerJoin('material', 'material.id', 'colourway_material.material_id')
    .select(['colourway_material.key', 'material.colour_hex', 'material.finish'])
    .where('colourway_material.colourway_id', '=', first?.id ?? '')
    .where('colourway_material.removed_by', 'is', null)
    .execute()
  const filled = new Map(rows.map((row) => [row.key, row]))
  return body.palette.map(({ label, colourHex, finish }) => {
    const bead = filled.get(slotKey(label))
    return {
      hex: bead?.colour_hex ?? colourHex,
      finish: (bead?.finish ?? finish) as Look['finish'],
    }
  })
}
