/** A point or a direction, y down; mm where it is a place. */
export type PointMm = Readonly<{ x: number; y: number }>
