import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

import { asciiOnly } from './scripts/build/ascii-only.ts'

const frame =
  /rolldown\/runtime|\/renderer\/(main|app|ui|styles)|\/node_modules\/(react|scheduler|@base-ui|@floating-ui|@tanstack)/

/** The window's page: ES modules served by the app's own scheme. */
export default defineConfig({
  root: 'renderer',
  base: './',
  plugins: [react(), asciiOnly()],
  worker: { plugins: () => [asciiOnly()] },
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    target: 'chrome130',
    // Nothing inlined: the page's security policy allows no data: scripts, styles or fonts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
    chunkSizeWarningLimit: 1_000,
    rolldownOptions: {
      output: {
        // What every screen is made of comes in one file: each file takes a turn of the main process.
        codeSplitting: { groups: [{ name: 'frame', test: frame }] },
      },
    },
  },
})
