// Sets up what is missing, then runs one of our TypeScript scripts on the project's own Node:
//   node scripts/run.mjs [--node-only] SCRIPT [ARGUMENT...]
import { spawn } from 'node:child_process'
import { delimiter, join } from 'node:path'

import { ownNode, repo } from './setup/paths.mjs'
import { setUpOrStop } from './setup.mjs'

const args = process.argv.slice(2)
const nodeOnly = args[0] === '--node-only'
const [script, ...rest] = nodeOnly ? args.slice(1) : args

await setUpOrStop({ nodeOnly })

const child = spawn(ownNode, [join(repo, script), ...rest], {
  stdio: 'inherit',
  env: {
    ...process.env,
    PATH: `${join(repo, 'node_modules', '.bin')}${delimiter}${process.env.PATH}`,
  },
})
// The terminal sends its interrupt to both; the script decides how to end.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal))
child.on('error', (cause) => {
  process.stderr.write(`${ownNode} did not start: ${cause.message}\n`)
  process.exit(1)
})
child.on('exit', (code) => process.exit(code ?? 1))
