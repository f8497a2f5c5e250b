import { readFileSync } from 'node:fs'
import { join } from 'node:path'

/** The Electron that the set-up has provided. */
export type Runtime = Readonly<{
  kind: 'official' | 'fallback'
  version: string
  folder: string
  executable: string
  sqliteBinding?: string
}>

export const repo = join(import.meta.dirname, '..')

/** Reads what the set-up recorded. */
export function readRuntime(): Runtime {
  try {
    return JSON.parse(readFileSync(join(repo, '.cache', 'runtime.json'), 'utf8')) as Runtime
  } catch {
    throw new Error('No Electron has been set up here yet. Run `npm run setup` first.')
  }
}

/** What an Electron process of ours needs in its environment. */
export function electronEnv(display: string | undefined): Record<string, string> {
  const { sqliteBinding } = readRuntime()
  const inherited = Object.entries(process.env).filter(
    (pair): pair is [string, string] => pair[1] !== undefined && pair[0] !== 'ELECTRON_RUN_AS_NODE',
  )
  return {
    ...Object.fromEntries(inherited),
    ...(display === undefined ? {} : { DISPLAY: display }),
    // On a virtual display there is no session bus either; looking for one only writes complaints.
    ...(process.env['DBUS_SESSION_BUS_ADDRESS'] === undefined && process.platform === 'linux'
      ? { DBUS_SESSION_BUS_ADDRESS: 'disabled:' }
      : {}),
    ...(sqliteBinding === undefined ? {} : { TALLYSTRAND_SQLITE_BINDING: sqliteBinding }),
  }
}

/** Root cannot use Chromium's sandbox; in a container it goes without, and only then. */
export function electronFlags(): readonly string[] {
  return process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : []
}
