import type { Page } from '@playwright/test'

import type { Answer, CallInput, CallName, CallOutput } from '../../shared-core/contract/calls.ts'

/** Asks the service through the page's own bridge; throws what it refuses. */
export async function ask<N extends CallName>(
  page: Page,
  name: N,
  input: CallInput<N>,
): Promise<CallOutput<N>> {
  const answer = await request(page, name, input)
  if (!answer.ok) throw new Error(`${name}: ${answer.error.message} ${answer.error.next}`)
  return answer.value
}

/** Asks the service through the page's own bridge and gives the whole answer. */
export function request<N extends CallName>(
  page: Page,
  name: N,
  input: CallInput<N>,
): Promise<Answer<CallOutput<N>>> {
  const sent: Readonly<{ name: string; input: unknown }> = { name, input }
  return page.evaluate((asked) => {
    const { tallystrand } = window as unknown as Readonly<{
      tallystrand: { request: (name: string, input: unknown) => Promise<never> }
    }>
    return tallystrand.request(asked.name, asked.input)
  }, sent)
}

/** The newest step of the history: another one once anything was written. */
export async function latestStep(page: Page): Promise<string | undefined> {
  return (await ask(page, 'history.list', { limit: 1 })).entries[0]?.id
}
