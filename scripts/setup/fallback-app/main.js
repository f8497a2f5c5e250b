// Loads the app folder named on the command line. Electron waits for this module, top-level await
// included, before it lets the app become ready, so the app's own entry always runs in time.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'

import { app } from 'electron'

const require = createRequire(import.meta.url)
const { folder, preloads } = readArguments(process.argv.slice(1))

if (folder === undefined) {
  process.stderr.write('Name the folder of an app to open.\n')
  app.exit(2)
} else {
  for (const file of preloads) require(resolve(file))
  const manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  app.setName(manifest.productName ?? manifest.name)
  app.setVersion(manifest.version)
  app.setAppPath(folder)
  await import(pathToFileURL(join(folder, manifest.main)).href)
}

function readArguments(args) {
  const preloads = []
  for (let i = 0; i < args.length; i++) {
    if (args[i] === '-r' || args[i] === '--require') preloads.push(args[++i])
    else if (!args[i].startsWith('-')) return { folder: resolve(args[i]), preloads }
  }
  return { folder: undefined, preloads }
}
