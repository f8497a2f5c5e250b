import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire, Module } from 'node:module'
import { dirname, join } from 'node:path'
import { Script } from 'node:vm'
import { crc32 } from 'node:zlib'

// Compiling the service and its libraries takes as long as all else it does before its first answer.
// V8 can keep what it has compiled; Node's own switch for that came after the oldest runtime we test.

const keepsAfterMs = 1_500
const parameters = '(exports, require, module, __filename, __dirname)'

type Wrapped = (
  exports: unknown,
  require: NodeJS.Require,
  module: unknown,
  file: string,
  folder: string,
) => void

/**
 * Loads a CommonJS bundle, from its compiled form where `folder` holds one for this very text and
 * this very V8, and otherwise keeps the compiled form there for the next start.
 */
export function loadCompiled(file: string, folder: string): unknown {
  const text = readFileSync(file, 'utf8')
  const kept = join(folder, `${keyOf(text)}.compiled`)
  const cachedData = readOrNothing(kept)
  const script = new Script(`(function ${parameters} {${text}\n})`, {
    filename: file,
    ...(cachedData === undefined ? {} : { cachedData }),
  })
  const require = createRequire(file)
  const module = new Module(file)
  // Parts loaded later ask for this file again and have to get this one, not a second.
  require.cache[file] = module
  const run = script.runInThisContext() as Wrapped
  run(module.exports, require, module, file, dirname(file))
  if (cachedData === undefined || script.cachedDataRejected === true) {
    // Later, so that it holds what the first answers needed and does not delay them.
    setTimeout(() => keep(script, kept), keepsAfterMs).unref()
  }
  return module.exports
}

/** Tells versions of our own text apart, and no more: a digest's library would take longer to load than all this. */
function keyOf(text: string): string {
  return `${process.versions.v8}-${text.length}-${crc32(text).toString(16)}`
}

function readOrNothing(file: string): Buffer | undefined {
  try {
    return readFileSync(file)
  } catch {
    return undefined
  }
}

/** Writes the compiled form and removes those of earlier versions. */
function keep(script: Script, file: string): void {
  try {
    const folder = dirname(file)
    mkdirSync(folder, { recursive: true })
    for (const name of readdirSync(folder)) rmSync(join(folder, name), { force: true })
    writeFileSync(`${file}.new`, script.createCachedData())
    renameSync(`${file}.new`, file)
  } catch {
    // A folder that cannot be written costs the next start its head start, nothing more.
  }
}
