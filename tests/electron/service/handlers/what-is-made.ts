import { TODAY } from '../open-studio.ts'
import type { SmallWorkshop } from '../small-workshop.ts'

/** The one design of the shop in its one colourway. */
export const what = ({ designId, colourwayId }: SmallWorkshop) => ({ designId, colourwayId })

/** A make of it, put where pieces lie. */
export const make = (shop: SmallWorkshop, units: number) => ({
  ...what(shop),
  units,
  placeId: shop.placeId,
  madeOn: TODAY,
  note: '',
})
