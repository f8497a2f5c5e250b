import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

import { buildStudio } from './build.ts'
import { runTool } from './run-tool.ts'
import { readRuntime, repo } from './runtime.ts'

/** Makes the unpacked app for this platform in release/ and gives its folder. */
export async function packageStudio(): Promise<string> {
  await buildStudio()
  const { folder, version } = readRuntime()
  const { code, output } = await runTool(
    'electron-builder',
    ['--dir', '--publish', 'never', '--config', 'electron-builder.config.mjs'],
    { env: { TALLYSTRAND_ELECTRON_DIST: folder, TALLYSTRAND_ELECTRON_VERSION: version } },
  )
  if (code !== 0) throw new Error(`electron-builder ended with ${code}\n${output}`)
  return join(repo, 'release', unpackedName())
}

function unpackedName(): string {
  if (process.platform === 'win32') return 'win-unpacked'
  return process.platform === 'darwin' ? `mac-${process.arch}` : 'linux-unpacked'
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { version, kind } = readRuntime()
  const folder = await packageStudio()
  process.stdout.write(`package: ${folder}, with Electron ${version} (${kind})\n`)
  if (kind === 'fallback') {
    process.stdout.write(
      'package: made with the fallback runtime, for tests on this machine only: not to be given to anyone\n',
    )
  }
  if (process.argv.includes('--for-tests')) {
    const { makeTwinForTests } = await import('./package/under-test.ts')
    await makeTwinForTests(folder)
  }
}
