import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'

import { runCommand } from './run-command.mjs'
import { during } from './say.mjs'
import { SetUpFailure } from './set-up-failure.mjs'

/** What Electron loads on Linux: the library as the loader names it, and Debian's package for it. */
const libraries = [
  { file: 'libgtk-3.so.0', package: 'libgtk-3-0' },
  { file: 'libnss3.so', package: 'libnss3' },
  { file: 'libasound.so.2', package: 'libasound2' },
  { file: 'libgbm.so.1', package: 'libgbm1' },
  { file: 'libXss.so.1', package: 'libxss1' },
  { file: 'libatk-bridge-2.0.so.0', package: 'libatk-bridge2.0-0' },
  { file: 'libdrm.so.2', package: 'libdrm2' },
  { file: 'libxkbcommon.so.0', package: 'libxkbcommon0' },
  { file: 'libcups.so.2', package: 'libcups2' },
]

export function hasDisplay() {
  if (process.platform !== 'linux') return true
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY)
}

/** Debian packages that are still needed to open a window here; empty where nothing is missing. */
export function missingSystemPackages() {
  if (process.platform !== 'linux') return []
  const known = spawnSync('/sbin/ldconfig', ['-p'], { encoding: 'utf8' }).stdout ?? ''
  const missing = libraries
    .filter(({ file }) => !known.includes(`\t${file} `))
    .map((library) => library.package)
  return hasDisplay() || onPath('Xvfb') ? missing : [...missing, 'xvfb']
}

/** Debian packages that are still needed to compile a native module here. */
export function missingBuildPackages() {
  return [
    ['g++', 'g++'],
    ['make', 'make'],
    ['python3', 'python3'],
    ['unzip', 'unzip'],
  ]
    .filter(([program]) => !onPath(program))
    .map(([, name]) => name)
}

/** Installs Debian packages as root; as anyone else, or on another system, says the exact command. */
export async function installSystemPackages(names) {
  if (names.length === 0) return
  const command = `sudo apt-get update && sudo apt-get install -y ${names.join(' ')}`
  if (!isDebian()) {
    throw new SetUpFailure(
      `These libraries or programs are missing (by their Debian names): ${names.join(', ')}.`,
      "install them with this system's own package manager, then run the same command again.",
    )
  }
  if (process.getuid() !== 0) {
    throw new SetUpFailure(
      `These system packages are missing: ${names.join(', ')}.`,
      `run this, then the same command again:\n    ${command}`,
    )
  }
  await during(`System packages (${names.join(', ')})`, () => aptInstall(names, command))
}

async function aptInstall(names, command) {
  const env = { DEBIAN_FRONTEND: 'noninteractive' }
  try {
    await runCommand('apt-get', ['update'], { env })
    const renamed = names.map(currentName)
    await runCommand('apt-get', ['install', '-y', '--no-install-recommends', ...renamed], { env })
  } catch (cause) {
    throw new SetUpFailure(`apt-get failed: ${cause.message}`, `run it by hand:\n    ${command}`)
  }
}

/** Newer Debian releases append `t64` to packages rebuilt for 64-bit time. */
function currentName(name) {
  const candidate = spawnSync('apt-cache', ['policy', `${name}t64`], { encoding: 'utf8' }).stdout
  return /Candidate: (?!\(none\))/.test(candidate ?? '') ? `${name}t64` : name
}

function isDebian() {
  const release = existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : ''
  return /^ID(_LIKE)?=.*debian/m.test(release) && onPath('apt-get')
}

function onPath(program) {
  const folders = (process.env.PATH ?? '').split(':')
  return folders.some((folder) => folder !== '' && existsSync(`${folder}/${program}`))
}
