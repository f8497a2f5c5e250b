import { defineConfig, type UserConfig } from 'vite'

import manifest from './package.json' with { type: 'json' }
import { asciiOnly } from './scripts/build/ascii-only.ts'
import { calls } from './shared-core/contract/calls.ts'
import { shellCalls } from './shared-core/contract/shell-calls.ts'

const bundled = ['kysely', 'better-sqlite3']

/** Packages that stay outside the bundles, because they find files of theirs by path at run time. */
const external = ['electron', ...Object.keys(manifest.dependencies)].filter(
  (name) => !bundled.includes(name),
)

type Entry = Readonly<{ folder: string; name: string; entry: string }>

/** What every entry that runs on Node has in common; the oldest runtime we test carries Node 20. */
function nodeEntry({ folder, name, entry }: Entry): UserConfig {
  return {
    plugins: [asciiOnly()],
    build: {
      ssr: true,
      outDir: `dist/${folder}`,
      emptyOutDir: true,
      target: 'node20',
      minify: true,
      reportCompressedSize: false,
      rollupOptions: {
        input: { [name]: entry },
        output: {
          format: 'cjs',
          entryFileNames: '[name].cjs',
          chunkFileNames: '[name]-[hash].cjs',
        },
      },
    },
    ssr: { target: 'node', noExternal: true, external },
  }
}

// Sandboxed preloads have to be CommonJS; the service is, so that its compiled form can be kept; and
// where the app and the service begin, Electron starts sooner without the loader of modules.
const entries: Readonly<Record<string, Entry>> = {
  main: { folder: 'main', name: 'main', entry: 'electron/main/main.ts' },
  preload: {
    folder: 'preload',
    name: 'preload',
    entry: 'electron/preload/preload.ts',
  },
  'service-entry': {
    folder: 'service-entry',
    name: 'main',
    entry: 'electron/service/main.ts',
  },
  service: {
    folder: 'service',
    name: 'service',
    entry: 'electron/service/open-service.ts',
  },
  documents: {
    folder: 'documents',
    name: 'document-worker',
    entry: 'electron/service/documents/document-worker.ts',
  },
}

/** One build for each mode: a key of `entries`. */
export default defineConfig(({ mode }) => {
  const entry = entries[mode]
  if (entry === undefined) throw new Error(`vite.node.config.ts builds no ${mode}`)
  if (mode !== 'preload') return nodeEntry(entry)
  return {
    ...nodeEntry(entry),
    // The names alone, so that the page need not load the schemas to know which calls exist.
    define: {
      __CALL_NAMES__: JSON.stringify(Object.keys(calls)),
      __SHELL_CALL_NAMES__: JSON.stringify(Object.keys(shellCalls)),
    },
  }
})
