import type { Flag, Kept } from './kept.ts'

export type MakeTable = Kept &
  Readonly<{
    version_id: string
    colourway_id: string
    order_line_id: string | null
    units: number
    made_on: string
    bench_s: number | null
    note: string
    materials_minor: number
    labour_minor: number
    overhead_minor: number
    cost_minor: number
    /** 1 where its bench time teaches nothing about the workshop's pace. */
    left_out: Flag
  }>

export type BenchWorkTable = Kept &
  Readonly<{
    version_id: string
    colourway_id: string
    order_line_id: string | null
    units: number
    begun_on: string
    /** Gross mg of tubes before the work, by material. */
    before_json: string
    /** From here to `kept_at_ms`: follows the hand, outside the history. */
    copy_at: number
    part_at: number
    step_at: number
    units_done: number
    worked_s: number
    resting: Flag
    kept_at_ms: number
    state: 'open' | 'done' | 'given-up'
    make_id: string | null
    log_json: string | null
    note: string
  }>

export type BenchHoldTable = Kept &
  Readonly<{ work_id: string; material_id: string; lot_id: string; quantity: number }>
