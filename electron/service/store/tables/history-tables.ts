import type { Flag } from './kept.ts'

export type ActionTable = Readonly<{
  id: string
  seq: number
  at_ms: number
  call: string
  label: string
  /** 1 for what cannot be undone: the sample's own past. */
  fixed: Flag
  state: 'done' | 'undone'
}>

export type ChangeTable = Readonly<{
  action_id: string
  seq: number
  kind: 'insert' | 'update' | 'append'
  table_name: string
  row_id: string
  before_json: string | null
  after_json: string | null
}>
