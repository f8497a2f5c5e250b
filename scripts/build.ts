import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { basename, join } from 'node:path'
import { pathToFileURL } from 'node:url'

import { build } from 'vite'

import { hashOf } from './build/hash-of.ts'

type Target = Readonly<{
  name: string
  /** What the result depends on, relative to the repository. */
  inputs: readonly string[]
  make: () => Promise<unknown>
}>

const repo = join(import.meta.dirname, '..')
const stamps = join(repo, 'dist', '.stamps')
const always = [
  'package-lock.json',
  'package.json',
  'tsconfig.json',
  'scripts/build.ts',
  'scripts/build',
]

type Mode = 'main' | 'preload' | 'service' | 'service-entry' | 'documents'

function nodeTarget(mode: Mode, ...inputs: readonly string[]): Target {
  return {
    name: mode,
    inputs: ['vite.node.config.ts', 'shared-core', ...inputs],
    make: () => build({ configFile: 'vite.node.config.ts', mode, logLevel: 'warn' }),
  }
}

const targets: readonly Target[] = [
  {
    name: 'renderer',
    inputs: ['vite.renderer.config.ts', 'renderer', 'shared-core'],
    make: () => build({ configFile: 'vite.renderer.config.ts', logLevel: 'warn' }),
  },
  nodeTarget('main', 'electron/main'),
  nodeTarget('preload', 'electron/preload'),
  nodeTarget('service', 'electron/service', 'migrations'),
  nodeTarget('service-entry', 'electron/service'),
  nodeTarget('documents', 'electron/service'),
  {
    name: 'files',
    inputs: ['resources', 'electron/service/documents/font-files.json'],
    make: async () => copyFiles(),
  },
]

/** Builds into dist/ what has changed since the last time, and tells which parts that were. */
export async function buildStudio(): Promise<readonly string[]> {
  process.chdir(repo)
  const stale = targets.filter((target) => stampOf(target) !== readStamp(target))
  await Promise.all(stale.map(buildTarget))
  return stale.map(({ name }) => name)
}

async function buildTarget(target: Target): Promise<void> {
  // Taken before building: what changes meanwhile is built again the next time.
  const stamp = stampOf(target)
  await target.make()
  mkdirSync(stamps, { recursive: true })
  writeFileSync(join(stamps, target.name), stamp)
}

function stampOf({ inputs }: Target): string {
  return hashOf(repo, [...always, ...inputs])
}

function readStamp({ name }: Target): string | undefined {
  const made = name === 'files' ? 'icon.png' : name
  if (!existsSync(join(repo, 'dist', made))) return undefined
  const file = join(stamps, name)
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

/** The window's icon, and the faces that documents embed, by the list that the documents keep. */
function copyFiles(): void {
  const dist = join(repo, 'dist')
  mkdirSync(dist, { recursive: true })
  cpSync(join(repo, 'resources', 'icons', '256x256.png'), join(dist, 'icon.png'))
  rmSync(join(dist, 'fonts'), { recursive: true, force: true })
  const list = join(repo, 'electron', 'service', 'documents', 'font-files.json')
  const fonts = existsSync(list)
    ? (JSON.parse(readFileSync(list, 'utf8')) as Readonly<Record<string, string>>)
    : {}
  for (const source of Object.values(fonts)) {
    cpSync(join(repo, 'node_modules', source), join(dist, 'fonts', basename(source)))
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const start = performance.now()
  const built = await buildStudio()
  const seconds = ((performance.now() - start) / 1000).toFixed(1)
  const what = built.length === 0 ? 'nothing had changed' : built.join(', ')
  process.stdout.write(
    `build: ${what} (${seconds} s), dist/ holds ${readdirSync('dist').join(', ')}\n`,
  )
}
