import type { Row } from '../../tests/bench/row.ts'

/** A row with its ratio to the baseline, and whether that stays within the target. */
export type Finding = Row & Readonly<{ ratio?: number; verdict?: 'met' | 'missed' }>

/** Adds to each row that names a baseline the ratio of the medians. */
export function withRatios(rows: readonly Row[]): readonly Finding[] {
  return rows.map((row) => {
    if (row.baseline === undefined) return row
    const base = rows.find(({ measure }) => measure === row.baseline)
    if (base === undefined) throw new Error(`${row.measure}: no row is named ${row.baseline}`)
    const ratio = row.median / base.median
    if (row.target === undefined) return { ...row, ratio }
    return { ...row, ratio, verdict: ratio <= row.target ? 'met' : 'missed' }
  })
}
