import type { CallSpec } from '../../shared-core/contract/call.ts'
import type { Desk } from './desk.ts'

/** What a call's turn gave: its value, or how that is made after the turn. */
export type Given = Readonly<{ value: unknown; unchanged?: true }>

/** Calls of the contract and what runs them. `run` gets the name of one of them and its parsed input. */
export type CallBook = Readonly<{
  calls: Readonly<Record<string, CallSpec>>
  run: (desk: Desk, name: string, input: unknown) => Promise<Given>
}>
