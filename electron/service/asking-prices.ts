import { priceSheet } from '../../shared-core/pricing/price-sheet.ts'
import type { Making } from './bills.ts'
import { readPriceInputs } from './price-inputs.ts'
import { latestVersions } from './store/design-rows.ts'
import type { View } from './store/view.ts'

/** What a piece asks in a channel: the maker's own price, else the suggested one. */
export type AskingPrices = (colourwayId: string, channelId: string) => number | null

/** Works out what pieces in some colourways ask, by the latest version of their designs. */
export async function readAskingPrices(
  view: View,
  colourways: readonly Readonly<{ colourwayId: string; designId: string }>[],
): Promise<AskingPrices> {
  const latest = await latestVersions(view)
  const byId = new Map(colourways.map((one) => [one.colourwayId, one.designId]))
  const makings: Making[] = [...byId].flatMap(([colourwayId, designId]) => {
    const version = latest.get(designId)
    return version === undefined ? [] : [{ versionId: version.id, colourwayId }]
  })
  const inputs = await readPriceInputs(view, makings)
  const prices = new Map(
    makings.map(({ colourwayId }, at) => {
      const own = inputs[at]
      const sheet = own && priceSheet(own)
      return [
        colourwayId,
        new Map(sheet?.channels.map(({ channelId, priceMinor }) => [channelId, priceMinor])),
      ]
    }),
  )
  return (colourwayId, channelId) => prices.get(colourwayId)?.get(channelId) ?? null
}
