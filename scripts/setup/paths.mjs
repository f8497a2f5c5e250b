import { homedir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const repo = dirname(dirname(dirname(fileURLToPath(import.meta.url))))

/** What belongs to this clone alone: the lock and the record of the runtime in use. */
export const cloneCache = join(repo, '.cache')

/** What several clones may share: runtimes and native builds, each in a folder named by version. */
export const sharedCache =
  process.env.TALLYSTRAND_CACHE ??
  join(process.env.XDG_CACHE_HOME ?? join(homedir(), '.cache'), 'tallystrand')

export const runtimeRecord = join(cloneCache, 'runtime.json')

/** The Node that the project brings along. */
export const ownNode = join(
  repo,
  'node_modules',
  'node',
  'bin',
  process.platform === 'win32' ? 'node.exe' : 'node',
)
