import { defineConfig, type UserConfig } from 'vite'

import manifest from './package.json' with { type: 'json' }
import { calls } from './shared-core/contract/calls.ts'
import { shellCalls } from './shared-core/contract/shell-calls.ts'

/** Packages that stay outside the bundles: native code, or files found by path at run time. */
const external = ['electron', ...Object.keys(manifest.dependencies)].filter(
  (name) => name !== 'kysely',
)

/** What every entry that runs on Node has in common; the oldest runtime we test carries Node 20. */
function nodeEntry(name: string, entry: string, format: 'es' | 'cjs'): UserConfig {
  return {
    build: {
      ssr: true,
      outDir: `dist/${name}`,
      emptyOutDir: true,
      target: 'node20',
      minify: true,
      reportCompressedSize: false,
      rollupOptions: {
        input: { [format === 'cjs' ? name : 'main']: entry },
        output: {
          format,
          entryFileNames: format === 'cjs' ? '[name].cjs' : '[name].js',
          chunkFileNames: '[name]-[hash].js',
        },
      },
    },
    ssr: { target: 'node', noExternal: true, external },
  }
}

/** One build for each mode: `main`, `service`, `preload`. */
export default defineConfig(({ mode }) => {
  if (mode === 'preload') {
    return {
      ...nodeEntry('preload', 'electron/preload/preload.ts', 'cjs'),
      // The names alone, so that the page need not load the schemas to know which calls exist.
      define: {
        __CALL_NAMES__: JSON.stringify(Object.keys(calls)),
        __SHELL_CALL_NAMES__: JSON.stringify(Object.keys(shellCalls)),
      },
    }
  }
  return nodeEntry(mode, `electron/${mode}/main.ts`, 'es')
})
