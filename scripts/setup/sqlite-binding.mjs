import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
} from 'node:fs'
import { dirname, join } from 'node:path'

import { repo, sharedCache } from './paths.mjs'
import { runCommand } from './run-command.mjs'
import { during } from './say.mjs'
import { SetUpFailure } from './set-up-failure.mjs'
import { installSystemPackages, missingBuildPackages } from './system-libraries.mjs'

// The prebuilt module wants Node-API 10; the fallback runtime has 9. With the experimental surface
// switched on the same sources build without the missing calls.
const compilerFlags =
  '-UNAPI_VERSION -DNAPI_VERSION=2147483647 -DNAPI_EXPERIMENTAL -DNODE_API_EXPERIMENTAL_NOGC_ENV_OPT_OUT'

/** Where the database module built for the fallback runtime lies, or will lie. */
export function sqliteBinding() {
  const { version } = packageOf('better-sqlite3')
  const folder = `better-sqlite3-${version}-napi9-${process.platform}-${process.arch}`
  return join(sharedCache, folder, 'better_sqlite3.node')
}

export function sqliteBindingIsReady() {
  return existsSync(sqliteBinding())
}

export async function makeSqliteBinding(electron) {
  await installSystemPackages(missingBuildPackages())
  mkdirSync(sharedCache, { recursive: true })
  const scratch = mkdtempSync(join(sharedCache, 'making-'))
  try {
    await during(
      'better-sqlite3 for the fallback runtime, from its sources (about 80 s, once)',
      () => compile(scratch),
    )
    const built = join(scratch, 'node_modules/better-sqlite3/build/Release/better_sqlite3.node')
    await tryOut(electron, built)
    mkdirSync(dirname(sqliteBinding()), { recursive: true })
    renameSync(built, sqliteBinding())
  } finally {
    rmSync(scratch, { recursive: true, force: true })
  }
}

async function compile(scratch) {
  for (const name of ['better-sqlite3', 'node-addon-api']) {
    cpSync(join(repo, 'node_modules', name), join(scratch, 'node_modules', name), {
      recursive: true,
    })
  }
  const gyp = join(repo, 'node_modules/node-gyp/bin/node-gyp.js')
  const headers = existsSync('/usr/include/node/node_api.h') ? ['--nodedir=/usr'] : []
  try {
    await runCommand(
      process.execPath,
      [gyp, 'rebuild', '--release', '--force_build=1', '--jobs=max', ...headers],
      { cwd: join(scratch, 'node_modules/better-sqlite3'), env: { CXXFLAGS: compilerFlags } },
    )
  } catch (cause) {
    throw new SetUpFailure(
      `better-sqlite3 did not build: ${cause.message}`,
      "a C++ compiler, make, Python 3 and Node's headers are needed (Debian: apt-get install g++ make python3 libnode-dev).",
    )
  }
}

async function tryOut(electron, binding) {
  const script = `
    const open = require(${JSON.stringify(join(repo, 'node_modules/better-sqlite3'))})
    const db = open(':memory:', { nativeBinding: ${JSON.stringify(binding)} })
    if (db.prepare('select 6 * 7 as n').get().n !== 42) process.exit(1)`
  try {
    await runCommand(electron, ['-e', script], { env: { ELECTRON_RUN_AS_NODE: '1' } })
  } catch (cause) {
    throw new SetUpFailure(
      `better-sqlite3 was built but does not run in the fallback runtime: ${cause.message}`,
      `remove ${sharedCache} and run the same command again.`,
    )
  }
}

function packageOf(name) {
  return JSON.parse(readFileSync(join(repo, 'node_modules', name, 'package.json'), 'utf8'))
}
