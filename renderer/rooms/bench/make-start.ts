/** What is known already when a make is begun or logged: nothing, a design, or an order's line. */
export type MakeStart = Readonly<{
  designId?: string
  colourwayId?: string
  orderLineId?: string
  units?: number
}>
