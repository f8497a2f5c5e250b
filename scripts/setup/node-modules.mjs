import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

import { ownNode, repo } from './paths.mjs'
import { runCommand } from './run-command.mjs'
import { during } from './say.mjs'
import { SetUpFailure } from './set-up-failure.mjs'

const lockFile = join(repo, 'package-lock.json')
const stampFile = join(repo, 'node_modules', '.tallystrand-stamp')

/** True when node_modules holds exactly what the lock names, and our own Node. */
export function nodeModulesAreReady() {
  if (!existsSync(ownNode)) return false
  if (readOrNothing(stampFile) === wantedStamp()) return true
  // An `npm install` of a new package keeps the folder in step without our stamp.
  if (!installedMatchesLock()) return false
  writeFileSync(stampFile, wantedStamp())
  return true
}

export async function installNodeModules() {
  await during('Node packages from the lock (npm ci)', async () => {
    try {
      await runCommand('npm', ['ci', '--no-audit', '--no-fund'], {
        cwd: repo,
        shell: process.platform === 'win32',
      })
    } catch (cause) {
      throw new SetUpFailure(
        `npm ci failed: ${cause.message}`,
        'check the connection to the package registry (npm ping), then run the same command again.',
      )
    }
    if (!existsSync(ownNode)) {
      throw new SetUpFailure(
        'npm ci ran, but node_modules/node/bin/node is missing.',
        "the install script of the package 'node' was kept from running; allow it (npm config get ignore-scripts must say false) and run `npm ci` again.",
      )
    }
    writeFileSync(stampFile, wantedStamp())
  })
}

function wantedStamp() {
  const lockHash = createHash('sha256').update(readFileSync(lockFile)).digest('hex')
  return `${lockHash} ${process.platform} ${process.arch}\n`
}

function installedMatchesLock() {
  const installedText = readOrNothing(join(repo, 'node_modules', '.package-lock.json'))
  if (installedText === undefined) return false
  const installed = JSON.parse(installedText).packages
  const wanted = JSON.parse(readFileSync(lockFile, 'utf8')).packages
  return Object.entries(wanted).every(([path, { version, optional }]) => {
    if (path === '') return true
    return installed[path] ? installed[path].version === version : optional === true
  })
}

function readOrNothing(file) {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return undefined
  }
}
