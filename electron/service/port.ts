import type { MessagePortMain } from 'electron'

import type { Answer } from '../../shared-core/contract/calls.ts'

type Asked = Readonly<{ id: number; name: string; input: unknown }>

/**
 * Answers what comes through a port: `{ id, name, input }` in, `{ id, answer }` out.
 *
 * Anything of another shape is dropped, since there is no id to answer to. `answer` checks the name
 * and parses the input; what it throws is a bug, noted on stderr and told as `internal`.
 */
export function servePort(
  port: Pick<MessagePortMain, 'on' | 'start' | 'postMessage'>,
  answer: (name: string, input: unknown) => Promise<Answer<unknown>>,
): void {
  port.on('message', async ({ data }) => {
    if (!isAsked(data)) return
    port.postMessage({ id: data.id, answer: await answerOrExcuse(data, answer) })
  })
  port.start()
}

async function answerOrExcuse(
  { name, input }: Asked,
  answer: (name: string, input: unknown) => Promise<Answer<unknown>>,
): Promise<Answer<unknown>> {
  try {
    return await answer(name, input)
  } catch (cause) {
    process.stderr.write(`${name} failed: ${cause instanceof Error ? cause.stack : cause}\n`)
    return { ok: false, error: internal }
  }
}

const internal = {
  code: 'internal',
  message: 'Something went wrong inside the studio; nothing was changed.',
  next: 'Try once more. The cause is noted in the studio’s log.',
}

function isAsked(value: unknown): value is Asked {
  const asked = value as Partial<Asked> | null
  return Number.isSafeInteger(asked?.id) && typeof asked?.name === 'string'
}
