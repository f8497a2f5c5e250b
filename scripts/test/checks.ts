import { runTool } from '../run-tool.ts'
import { coreBreaches } from './core-rules.ts'
import type { Step, StepEnd } from './step.ts'

const folders = ['shared-core', 'electron', 'renderer', 'migrations', 'scripts', 'tests']

/** Everything that reads the code without running it. */
export const checks: readonly Step[] = [
  check('format and lint (biome)', 'biome', ['check', '--error-on-warnings', '.']),
  check('types (tsc)', 'tsc', ['--noEmit', '-p', '.']),
  check('types of the core alone (tsc)', 'tsc', ['--noEmit', '-p', 'shared-core']),
  check('import rules (dependency-cruiser)', 'node', [
    '--import',
    './scripts/test/older-typescript.mjs',
    'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
    '--config',
    '.dependency-cruiser.cjs',
    ...folders,
  ]),
  { name: 'rules of the core', run: checkCore },
]

async function checkCore(): Promise<StepEnd> {
  const start = performance.now()
  const output = coreBreaches().join('\n')
  const seconds = (performance.now() - start) / 1000
  return { name: 'rules of the core', seconds, passed: 0, failed: output === '' ? 0 : 1, output }
}

/** A tool that passes by ending with 0. */
function check(name: string, program: string, args: readonly string[]): Step {
  return { name, run: () => runCheck(name, program, args) }
}

async function runCheck(name: string, program: string, args: readonly string[]): Promise<StepEnd> {
  const { code, output, seconds } = await runTool(program, args)
  const failed = code === 0 ? 0 : 1
  return { name, seconds, passed: 0, failed, output: failed === 0 ? '' : output }
}

/** Runs the checks two at a time, which is what a small machine has cores for. */
export async function runChecks(tell: (end: StepEnd) => void): Promise<readonly StepEnd[]> {
  const waiting = [...checks]
  const ends: StepEnd[] = []
  const work = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      const end = await next.run()
      ends.push(end)
      tell(end)
    }
  }
  await Promise.all([work(), work()])
  return ends
}
