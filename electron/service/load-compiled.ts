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
  require: (name: string) => unknown,
  module: unknown,
  file: string,
  folder: string,
) => void

/** A bundle being loaded: where its compiled parts are kept, and what this start has used of them. */
type Loading = Readonly<{
  folder: string
  modules: Map<string, Module>
  used: Set<string>
}>

/**
 * Loads a CommonJS bundle and, when it asks for them, its parts beside it; each from its compiled
 * form where `folder` holds one for this very text and this very V8. Otherwise the compiled form is
 * kept there for the next start.
 */
export function loadCompiled(file: string, folder: string): unknown {
  return load(file, { folder, modules: new Map(), used: new Set() })
}

function load(file: string, loading: Loading): unknown {
  const known = loading.modules.get(file)
  if (known !== undefined) return known.exports
  const module = new Module(file)
  loading.modules.set(file, module)
  const outside = createRequire(file)
  const require = (name: string) =>
    name.startsWith('./') ? load(join(dirname(file), name), loading) : outside(name)
  compile(file, loading)(module.exports, require, module, file, dirname(file))
  return module.exports
}

function compile(file: string, { folder, used }: Loading): Wrapped {
  const text = readFileSync(file, 'utf8')
  const kept = `${keyOf(text)}.compiled`
  used.add(kept)
  const cachedData = readOrNothing(join(folder, kept))
  const script = new Script(`(function ${parameters} {${text}\n})`, {
    filename: file,
    ...(cachedData === undefined ? {} : { cachedData }),
  })
  if (cachedData === undefined || script.cachedDataRejected === true) {
    // Later, so that it holds what the first answers needed and does not delay them.
    setTimeout(() => keep(script, folder, { kept, used }), keepsAfterMs).unref()
  }
  return script.runInThisContext() as Wrapped
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

/** Writes the compiled form and removes those that this start has not used: of earlier versions. */
function keep(
  script: Script,
  folder: string,
  { kept, used }: Readonly<{ kept: string; used: ReadonlySet<string> }>,
): void {
  try {
    const file = join(folder, kept)
    mkdirSync(folder, { recursive: true })
    for (const name of readdirSync(folder)) {
      if (!used.has(name)) rmSync(join(folder, name), { force: true })
    }
    writeFileSync(`${file}.new`, script.createCachedData())
    renameSync(`${file}.new`, file)
  } catch {
    // A folder that cannot be written costs the next start its head start, nothing more.
  }
}
