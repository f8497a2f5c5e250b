import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

import { buildStudio } from './build.ts'
import { readRuntime, repo } from './runtime.ts'

/** Makes the unpacked app for this platform in release/ and gives its folder. */
export async function packageStudio(): Promise<string> {
  await buildStudio()
  const runtime = readRuntime()
  process.env['TALLYSTRAND_ELECTRON_DIST'] = runtime.folder
  process.env['TALLYSTRAND_ELECTRON_VERSION'] = runtime.version
  const { build, Platform } = await import('electron-builder')
  const { packaging } = await import('../electron-builder.config.ts')
  await build({
    targets: Platform.current().createTarget('dir'),
    config: packaging,
    projectDir: repo,
  })
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
