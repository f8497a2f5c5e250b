import { defineConfig } from '@playwright/test'

/** End-to-end tests in the real app: unpackaged, or packaged with TALLYSTRAND_APP=packaged. */
export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '**/*.spec.ts',
  testIgnore: process.env['TALLYSTRAND_APP'] === 'packaged' ? [] : ['**/*-packaged.spec.ts'],
  globalSetup: './tests/e2e/open-display.ts',
  outputDir: 'test-output/e2e',
  fullyParallel: true,
  workers: 2,
  retries: 0,
  timeout: 120_000,
  expect: { timeout: 10_000 },
  reporter: [['list']],
})
