import { spawn } from 'node:child_process'

import { repo } from './runtime.ts'

export type ToolEnd = Readonly<{ code: number; output: string; seconds: number }>

type Options = Readonly<{ env?: Readonly<Record<string, string>>; show?: boolean }>

/** Runs one of the project's tools to its end; `show` passes its output through as it comes. */
export function runTool(
  program: string,
  args: readonly string[],
  { env = {}, show = false }: Options = {},
): Promise<ToolEnd> {
  const start = performance.now()
  let output = ''
  const tool = spawn(program, args, { cwd: repo, env: { ...process.env, ...env } })
  const take = (chunk: Buffer) => {
    output += chunk
    if (show) process.stdout.write(chunk)
  }
  tool.stdout.on('data', take)
  tool.stderr.on('data', take)
  return new Promise((resolve) => {
    const end = (code: number) =>
      resolve({ code, output, seconds: (performance.now() - start) / 1000 })
    tool.on('error', (cause) => {
      output += cause.message
      end(1)
    })
    tool.on('close', (code) => end(code ?? 1))
  })
}
