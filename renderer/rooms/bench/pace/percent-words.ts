import type { Format } from '../../../app/format.ts'

/** A share as percent with one decimal: `2,4 %`, `−1,0 %`. */
export function percentWords(share: number, { decimal }: Pick<Format, 'decimal'>): string {
  const tenths = Math.round(share * 1_000) / 10
  const digits = Math.abs(tenths).toFixed(1).replace('.', decimal)
  return `${tenths < 0 ? '−' : ''}${digits} %`
}
