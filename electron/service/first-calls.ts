import { tableCalls } from '../../shared-core/contract/table-calls.ts'
import { workshopCalls } from '../../shared-core/contract/workshop-calls.ts'
import type { CallBook } from './call-book.ts'
import { onStore } from './desk.ts'
import type { QueryHandler } from './handlers/handler.ts'
import { readOwnTables } from './handlers/own-tables.ts'
import { readWorkshop } from './handlers/read-workshop.ts'

const calls = {
  'workshop.read': workshopCalls['workshop.read'],
  'tables.own': tableCalls['tables.own'],
}
type FirstName = keyof typeof calls

const handlers: { readonly [N in FirstName]: QueryHandler<N> } = {
  'workshop.read': readWorkshop,
  'tables.own': readOwnTables,
}

/** What the first screen asks. Building the rest of the contract takes longer than answering these. */
export const firstCalls: CallBook = {
  calls,
  run: (desk, name, input) => {
    // The compiler cannot follow a name that is a variable.
    const handler = handlers[name as FirstName] as QueryHandler<FirstName>
    const atMs = desk.now()
    return onStore(desk, 'repeatable read', async (view) => ({
      value: await handler({ ...view, atMs }, input as never),
    }))
  },
}
