import { type ChildProcess, spawn } from 'node:child_process'
import { chownSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { expect, test } from '@playwright/test'
import { packagedUnderTest } from '../../scripts/package/under-test.ts'
import { electronEnv } from '../../scripts/runtime.ts'

// Root goes without Chromium's sandbox, so this test lets another user start the packaged app and
// asks the kernel how the page's process is held. Packaged only: that is a folder anyone can read.

const nobody = 65_534
const filteredSystemCalls = '2'

test.skip(process.platform !== 'linux', 'asks the Linux kernel')

test('the page’s process is held by the kernel when an ordinary user starts the studio', async () => {
  const scratch = mkdtempSync(join(tmpdir(), 'tallystrand-nobody-'))
  const isRoot = process.getuid?.() === 0
  if (isRoot) chownSync(scratch, nobody, nobody)
  const studio = spawn(packagedUnderTest(), [`--user-data-dir=${join(scratch, 'user')}`], {
    ...(isRoot ? { uid: nobody, gid: nobody } : {}),
    cwd: scratch,
    stdio: ['ignore', 'pipe', 'ignore'],
    env: {
      ...electronEnv(process.env['DISPLAY']),
      HOME: scratch,
      TALLYSTRAND_SAY_WHEN_READY: '1',
    },
  })
  try {
    await expect.poll(() => pageProcesses(studio).length, { timeout: 30_000 }).toBe(1)
    const [page = 0] = pageProcesses(studio)
    await expect.poll(() => statusOf(page, 'Seccomp')).toBe(filteredSystemCalls)
    expect(statusOf(page, 'NoNewPrivs')).toBe('1')
  } finally {
    const gone = new Promise((resolve) => studio.once('exit', resolve))
    studio.kill('SIGKILL')
    await gone
    rmSync(scratch, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 })
  }
})

/** Renderers started by this studio, found by its folder on their command lines. */
function pageProcesses(studio: ChildProcess): readonly number[] {
  const folder = studio.spawnargs.find((argument) => argument.startsWith('--user-data-dir='))
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .filter((pid) => {
      const line = read(`/proc/${pid}/cmdline`)
      return line.includes('--type=renderer') && line.includes(folder ?? 'no folder')
    })
    .map(Number)
}

function statusOf(pid: number, field: string): string | undefined {
  return new RegExp(`^${field}:\\s+(\\d+)$`, 'm').exec(read(`/proc/${pid}/status`))?.[1]
}

function read(file: string): string {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return ''
  }
}
