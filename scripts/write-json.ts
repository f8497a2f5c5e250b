import { once } from 'node:events'
import type { Writable } from 'node:stream'

/** Lists longer than this get a line an entry: an event list of a panel is read, not admired. */
const LONG = 500
const AT_ONCE = 1 << 16

/**
 * Writes a value as JSON, indented, piece by piece: what a large panel comes to is longer than any
 * one text can be.
 */
export async function writeJson(value: unknown, to: Writable): Promise<void> {
  let waiting = ''
  for (const piece of pieces(value, '\n')) {
    waiting += piece
    if (waiting.length < AT_ONCE) continue
    if (!to.write(waiting)) await drainedOrClosed(to)
    // A reader that has seen enough closes its end: the error is the caller's to judge, the rest is not written.
    if (to.destroyed || to.errored !== null) return
    waiting = ''
  }
  to.write(`${waiting}\n`)
}

async function drainedOrClosed(to: Writable): Promise<void> {
  const waiting = new AbortController()
  const { signal } = waiting
  await Promise.race([once(to, 'drain', { signal }), once(to, 'close', { signal })]).catch(() => {})
  // The other is waited for no longer: a long value would leave a listener for every piece.
  waiting.abort()
}

function* pieces(value: unknown, line: string): Generator<string> {
  const inner = `${line}  `
  if (Array.isArray(value) && value.length > 0) {
    const isLong = value.length > LONG
    yield '['
    for (const [at, entry] of value.entries()) {
      yield at === 0 ? inner : `,${inner}`
      if (isLong) yield JSON.stringify(entry ?? null)
      else yield* pieces(entry ?? null, inner)
    }
    yield `${line}]`
    return
  }
  const fields = isGroup(value) ? Object.entries(value).filter(([, one]) => one !== undefined) : []
  if (fields.length === 0) {
    yield isGroup(value) ? '{}' : JSON.stringify(value)
    return
  }
  yield '{'
  for (const [at, [name, one]] of fields.entries()) {
    yield `${at === 0 ? '' : ','}${inner}${JSON.stringify(name)}: `
    yield* pieces(one, inner)
  }
  yield `${line}}`
}

function isGroup(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
