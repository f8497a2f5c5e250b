import type { Format } from '../../../app/format.ts'
import type { Reckoned } from './finish-draft.ts'

type Line = Reckoned['lines'][number]

/** What will be booked, in plain sentences: the pieces, then what leaves the stock. */
export function bookingWords(
  lines: readonly Line[],
  pieces: Readonly<{ count: number; unitName: string; place: string; orderCode: string | null }>,
  format: Format,
): readonly string[] {
  const { count, unitName, place, orderCode } = pieces
  const forWhom = orderCode === null ? '' : `, kept for ${orderCode}`
  const byMaterial = [...Map.groupBy(lines, (line) => line.materialId).values()]
  const parts = byMaterial.map((own) => materialWords(own, format))
  return [
    `${format.counted(count, unitName)} will stand in ${place}${forWhom}.`,
    `Out of stock: ${parts.join('; ')}.`,
  ]
}

function materialWords(lines: readonly Line[], format: Format): string {
  const [first] = lines
  if (first === undefined) return ''
  const write = (own: readonly Line[]) =>
    format.quantity(
      own.reduce((sum, { quantity }) => sum + quantity, 0),
      first.unit,
    )
  const waste = lines.filter(({ kind }) => kind === 'waste')
  const weighed = lines.filter(({ kind }) => kind === 'weighed')
  const details = [
    ...(waste.length === 0 ? [] : [`${write(waste)} of it put aside`]),
    ...(weighed.length === 0 ? [] : [`${write(weighed)} of it more than the pieces hold`]),
  ]
  return `${write(lines)} of ${first.name}${details.length === 0 ? '' : ` (${details.join(', ')})`}`
}
