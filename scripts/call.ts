import { text } from 'node:stream/consumers'
import { parseArgs } from 'node:util'

import { z } from 'zod'

import { calls } from '../shared-core/contract/calls.ts'
import { writeJson } from './write-json.ts'

// One call of the contract without a window:
//   npm run --silent call -- --db FILE NAME < input.json
//   npm run --silent call -- --list
// Prints the value, or { "error": ... } and ends with 1. A wrong command line ends with 2.

const usage = `Usage:
  npm run --silent call -- --db FILE NAME < input.json
  npm run --silent call -- --list
NAME is a call of the contract. The input is one JSON value; none is read as {}.
Calls that begin with "engine." need no --db. A FILE that is not there yet is made.`

const worked = 0
const refused = 1
const misused = 2

// A reader that has seen enough, such as `head`, is no fault.
process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
  if (cause.code !== 'EPIPE') throw cause
})
process.exitCode = await main(process.argv.slice(2))

async function main(args: readonly string[]): Promise<number> {
  const command = readCommand(args)
  if (command.kind === 'wrong') {
    process.stderr.write(`${command.why}\n\n${usage}\n`)
    return misused
  }
  if (command.kind === 'list') {
    await writeJson(describeCalls(), process.stdout)
    return worked
  }
  return callOnce(command)
}

type Command =
  | Readonly<{ kind: 'list' }>
  | Readonly<{ kind: 'call'; name: string; file: string }>
  | Readonly<{ kind: 'wrong'; why: string }>

function readCommand(args: readonly string[]): Command {
  const read = readOptions(args)
  if (typeof read === 'string') return { kind: 'wrong', why: read }
  const { values, positionals } = read
  const [name, extra] = positionals
  if (values.list === true) return { kind: 'list' }
  if (name === undefined) return { kind: 'wrong', why: 'Name a call.' }
  if (extra !== undefined)
    return { kind: 'wrong', why: `One call at a time: ${extra} is too much.` }
  if (!needsFile(name)) return { kind: 'call', name, file: '' }
  if (values.db === undefined) return { kind: 'wrong', why: `${name} needs --db FILE.` }
  return { kind: 'call', name, file: values.db }
}

/** A name that is not in the contract is the service's to refuse, and needs no file for that. */
function needsFile(name: string): boolean {
  return Object.hasOwn(calls, name) && !name.startsWith('engine.')
}

function readOptions(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: { db: { type: 'string' }, list: { type: 'boolean' } },
      allowPositionals: true,
    })
  } catch (cause) {
    return cause instanceof Error ? cause.message : String(cause)
  }
}

async function callOnce({ name, file }: Extract<Command, { kind: 'call' }>): Promise<number> {
  const input = await readInput()
  if (!input.ok) {
    await writeJson({ error: input.error }, process.stdout)
    return refused
  }
  // Loaded only when there is something to ask.
  const { openService } = await import('../electron/service/open-service.ts')
  const service = await openService(file)
  try {
    const answer = await service.answer(name, input.value)
    await writeJson(answer.ok ? answer.value : { error: answer.error }, process.stdout)
    return answer.ok ? worked : refused
  } finally {
    await service.close()
  }
}

async function readInput() {
  const written = process.stdin.isTTY ? '' : await text(process.stdin)
  try {
    return { ok: true, value: written.trim() === '' ? {} : JSON.parse(written) } as const
  } catch (cause) {
    return {
      ok: false,
      error: {
        code: 'bad-json',
        message: `The input is not JSON: ${cause instanceof Error ? cause.message : cause}.`,
        next: 'Give one JSON value on standard input.',
      },
    } as const
  }
}

function describeCalls() {
  const shape = (schema: z.ZodType, io: 'input' | 'output') =>
    z.toJSONSchema(schema, { io, unrepresentable: 'any' })
  return Object.entries(calls).map(([name, { input, output, ...spec }]) => ({
    name,
    ...spec,
    input: shape(input, 'input'),
    output: shape(output, 'output'),
  }))
}
