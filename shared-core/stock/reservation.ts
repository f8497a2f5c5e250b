/**
 * Stock held back: `quantity` of a lot, in the material's unit.
 *
 * With `lineId` it is held for that order line; without, for something outside the orders (a planned
 * make, a kit, a quote).
 */
export type Reservation = Readonly<{
  materialId: string
  lotId: string
  quantity: number
  lineId?: string
}>
