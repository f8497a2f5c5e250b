import { defineConfig } from 'vitest/config'

/** Unit and store tests, on the project's own Node; what needs a window is Playwright's. */
export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/e2e/**'],
    pool: 'forks',
    // Starting a process for each file took longer than its tests; no test changes what another sees.
    isolate: false,
    // Vitest keeps one core back, which on two is half of them.
    maxWorkers: '100%',
    // For a loaded machine; a single test takes far less.
    testTimeout: 30_000,
    coverage: {
      provider: 'v8',
      reportsDirectory: 'coverage',
      reporter: ['text-summary', 'html', 'json-summary'],
      include: ['shared-core/**/*.ts', 'electron/**/*.ts', 'migrations/**/*.ts'],
      // The shell runs in Electron only; the end-to-end tests cover it there.
      exclude: ['electron/main/**', 'electron/preload/**', 'electron/service/main.ts'],
    },
  },
})
