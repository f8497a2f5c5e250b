/** Cells looked at one by one before the built-in search, which is quicker on long runs, is called. */
const NEAR = 16

/** The index of the first bead at or after `from`, or the row's length. */
export function nextBead(cells: Uint16Array, from: number): number {
  let i = from
  while (i < cells.length && cells[i] === 0) i += 1
  return i
}

/** The index of the first blank at or after `from`, or the row's length. */
export function nextBlank(cells: Uint16Array, from: number): number {
  const near = Math.min(cells.length, from + NEAR)
  let i = from
  while (i < near && cells[i] !== 0) i += 1
  if (i < near || i === cells.length) return i
  const blank = cells.indexOf(0, i)
  return blank < 0 ? cells.length : blank
}
