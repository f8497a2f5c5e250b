import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

import {
  fallbackFolder,
  fallbackIsPossible,
  fallbackIsReady,
  fallbackNotice,
  fallbackVersion,
  makeFallback,
} from './fallback-runtime.mjs'
import { repo, runtimeRecord } from './paths.mjs'
import { runCommand } from './run-command.mjs'
import { during, say } from './say.mjs'
import { SetUpFailure } from './set-up-failure.mjs'
import { makeSqliteBinding, sqliteBinding, sqliteBindingIsReady } from './sqlite-binding.mjs'

const electronPackage = join(repo, 'node_modules', 'electron')
const downloadLimitMs = 15 * 60_000

/**
 * The Electron in use: `kind`, `version`, `folder` and `executable`, plus `sqliteBinding` where the
 * database module had to be built for it. Undefined until the set-up has found one.
 */
export function readRuntime() {
  try {
    return JSON.parse(readFileSync(runtimeRecord, 'utf8'))
  } catch {
    return undefined
  }
}

export function runtimeIsReady() {
  const runtime = readRuntime()
  if (runtime === undefined || !existsSync(runtime.executable)) return false
  if (runtime.kind === 'official') return runtime.version === officialVersion()
  return (
    fallbackIsReady() &&
    runtime.folder === fallbackFolder() &&
    sqliteBindingIsReady() &&
    runtime.sqliteBinding === sqliteBinding()
  )
}

/** Electron from its own host; where that cannot be reached, the fallback for tests. */
export async function provideRuntime({ retry = false } = {}) {
  const settled = readRuntime()?.kind === 'fallback' && !retry
  if (!settled && (await installOfficial())) return record(officialRuntime())
  await provideFallback()
  record({
    kind: 'fallback',
    version: fallbackVersion,
    folder: fallbackFolder(),
    executable: join(fallbackFolder(), 'electron'),
    sqliteBinding: sqliteBinding(),
  })
}

async function installOfficial() {
  try {
    await during(`Electron ${officialVersion()} from its own host`, () =>
      runCommand(process.execPath, [join(electronPackage, 'install.js')], {
        timeoutMs: downloadLimitMs,
      }),
    )
    return true
  } catch (cause) {
    say(`Electron's own host did not answer (${firstLine(cause.message)})`)
    return false
  }
}

async function provideFallback() {
  if (!fallbackIsPossible()) {
    throw new SetUpFailure(
      `Electron ${officialVersion()} could not be downloaded.`,
      'check the connection, or name a mirror in ELECTRON_MIRROR, and run the same command again.',
    )
  }
  say(fallbackNotice)
  if (!fallbackIsReady()) await makeFallback()
  if (!sqliteBindingIsReady()) await makeSqliteBinding(join(fallbackFolder(), 'electron'))
}

function officialVersion() {
  return JSON.parse(readFileSync(join(electronPackage, 'package.json'), 'utf8')).version
}

function officialRuntime() {
  const folder = join(electronPackage, 'dist')
  const program = readFileSync(join(electronPackage, 'path.txt'), 'utf8')
  return { kind: 'official', version: officialVersion(), folder, executable: join(folder, program) }
}

function record(runtime) {
  mkdirSync(dirname(runtimeRecord), { recursive: true })
  const draft = `${runtimeRecord}.${process.pid}`
  writeFileSync(draft, `${JSON.stringify(runtime, null, 2)}\n`)
  renameSync(draft, runtimeRecord)
}

function firstLine(text) {
  const lines = text.split('\n').filter((line) => /\w/.test(line))
  return (lines[1] ?? lines[0] ?? 'no message').trim()
}
