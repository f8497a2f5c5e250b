import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'

import { cloneCache } from './paths.mjs'
import { say } from './say.mjs'

const lock = join(cloneCache, 'setup.lock')

/** Runs `work` while no other set-up of this clone runs; waits for one that does. */
export async function oneAtATime(work) {
  mkdirSync(cloneCache, { recursive: true })
  await takeLock()
  try {
    return await work()
  } finally {
    rmSync(lock, { recursive: true, force: true })
  }
}

async function takeLock() {
  let told = false
  while (!tryLock()) {
    if (!told) say('another set-up of this folder is running; waiting for it')
    told = true
    await pause(500)
  }
}

function tryLock() {
  try {
    mkdirSync(lock)
    writeFileSync(join(lock, 'pid'), String(process.pid))
    return true
  } catch (cause) {
    if (cause.code !== 'EEXIST') throw cause
    if (holderIsGone()) rmSync(lock, { recursive: true, force: true })
    return false
  }
}

function holderIsGone() {
  const pid = readPid()
  // No number yet: its holder may be between the two calls that make the lock.
  if (pid === undefined) return false
  try {
    process.kill(pid, 0)
    return false
  } catch (cause) {
    return cause.code === 'ESRCH'
  }
}

function readPid() {
  try {
    return Number(readFileSync(join(lock, 'pid'), 'utf8')) || undefined
  } catch {
    return undefined
  }
}
