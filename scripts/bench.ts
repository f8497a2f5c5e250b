import { mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { dirname, join } from 'node:path'
import { parseArgs } from 'node:util'

import type { Row } from '../tests/bench/row.ts'
import { benchTable } from './bench/table.ts'
import { type Finding, withRatios } from './bench/with-ratios.ts'
import { readRuntime, repo } from './runtime.ts'

// npm run bench: runs every tests/bench/*.bench.ts and prints medians, spreads and ratios.
//   npm run bench -- [--json FILE] [PART OF A NAME...]

type Bench = Readonly<{ name: string; run: () => Promise<readonly Row[]> }>

const { values, positionals } = parseArgs({
  options: { json: { type: 'string' } },
  allowPositionals: true,
})
const folder = join(repo, 'tests', 'bench')
const files = readdirSync(folder)
  .filter((file) => file.endsWith('.bench.ts'))
  .filter((file) => positionals.length === 0 || positionals.some((part) => file.includes(part)))
  .toSorted()

const results: { name: string; rows: readonly Finding[] }[] = []
for (const file of files) {
  const bench = (await import(join(folder, file))) as Bench
  process.stdout.write(`\n${bench.name}\n`)
  const rows = withRatios(await bench.run())
  process.stdout.write(`${benchTable(rows)}\n`)
  results.push({ name: bench.name, rows })
}

const { kind, version } = readRuntime()
const machine = { cores: cpus().length, cpu: cpus()[0]?.model, electron: version, runtime: kind }
if (values.json !== undefined) {
  mkdirSync(dirname(values.json), { recursive: true })
  writeFileSync(values.json, `${JSON.stringify({ machine, results }, null, 2)}\n`)
  process.stdout.write(`\nwritten to ${values.json}\n`)
}
const missed = results.flatMap(({ rows }) => rows).filter(({ verdict }) => verdict === 'missed')
process.stdout.write(
  missed.length === 0
    ? '\nevery target was met\n'
    : `\nmissed: ${missed.map(({ measure }) => measure).join('; ')}\n`,
)
