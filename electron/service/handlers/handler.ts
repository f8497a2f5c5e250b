import type {
  CallName,
  CallOutput,
  Calls,
  ParsedInput,
} from '../../../shared-core/contract/calls.ts'
import type { Later } from '../later.ts'
import type { PureName } from '../pure-names.ts'
import type { Act } from '../store/act.ts'
import type { View } from '../store/view.ts'

/** What a handler that only reads may use: one consistent view of the store. */
export type Reading = View & Readonly<{ atMs: number }>

/** What an act answers with, and how the history names it. */
export type Done<T> = Readonly<{ value: T; label: string }>

/** Calls that change the store and can be undone. */
export type ActName = { [N in CallName]: Calls[N]['undoable'] extends true ? N : never }[CallName]
/** Calls that change the store outside the history. */
export type StepName = {
  [N in Exclude<CallName, ActName>]: Calls[N]['changes']['length'] extends 0 ? never : N
}[Exclude<CallName, ActName>]
/** Calls that only read. */
export type QueryName = Exclude<CallName, ActName | StepName>

/** Computes an answer from the input alone; throws `Refused`. */
export type PureHandler<N extends PureName> = (input: ParsedInput<N>) => CallOutput<N>

/** Reads what a query answers. */
export type QueryHandler<N extends QueryName> = (
  reading: Reading,
  input: ParsedInput<N>,
) => Promise<CallOutput<N>>

/** Reads what a query's answer is made from after its turn. */
export type LaterHandler<N extends QueryName> = (
  reading: Reading,
  input: ParsedInput<N>,
) => Promise<Later<CallOutput<N>>>

/** Does an act of the maker inside its transaction; throws `Refused` to leave everything as it was. */
export type ActHandler<N extends ActName> = (
  act: Act,
  input: ParsedInput<N>,
) => Promise<Done<CallOutput<N>>>
