import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import BetterSqlite from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openStudio } from './open-studio.ts'

const KILLS = 4
const child = new URL('./store-until-killed.ts', import.meta.url)
let folder = ''

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tallystrand-kill-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** Runs a studio that adds lots as fast as it can, and kills it after some were acknowledged. */
async function killAfter(file: string, acknowledged: number): Promise<string[]> {
  const writer: ChildProcess = spawn(process.execPath, [child.pathname, file], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const seen: string[] = []
  if (writer.stdout === null) throw new Error('expected a pipe')
  for await (const lotId of createInterface({ input: writer.stdout })) {
    seen.push(lotId)
    if (seen.length === acknowledged) writer.kill('SIGKILL')
  }
  return seen
}

describe('two studios on one file', () => {
  it('wait for each other and lose nothing', { timeout: 60_000 }, async () => {
    const file = join(folder, 'workshop.tally')
    await killAfter(file, 1)
    const kept = await Promise.all([killAfter(file, 25), killAfter(file, 25)])
    const db = new BetterSqlite(file)
    const lots = db.prepare('select id from lot').pluck().all() as string[]
    expect(kept.flat().filter((id) => !lots.includes(id))).toEqual([])
    const steps = db.prepare('select count(*), max(seq) from action').raw().get() as number[]
    expect(steps[0]).toBe(steps[1])
    db.close()
  })
})

describe('a studio killed in the middle of its work', () => {
  it('has kept every act it acknowledged, whole, time after time', {
    timeout: 60_000,
  }, async () => {
    const file = join(folder, 'workshop.tally')
    const acknowledged: string[] = []
    for (let kill = 0; kill < KILLS; kill++) {
      acknowledged.push(...(await killAfter(file, 5 + 7 * kill)))
      const db = new BetterSqlite(file)
      const lots = db.prepare('select id from lot').pluck().all() as string[]
      expect(acknowledged.filter((id) => !lots.includes(id))).toEqual([])
      // An act is its lot, its movement and its place in the history, or nothing.
      expect(
        db
          .prepare(
            `select (select count(*) from lot) - (select count(*) from stock_movement) as movements,
              (select count(*) from lot) - (select count(*) from action where call = 'lots.receive') as steps`,
          )
          .get(),
      ).toEqual({ movements: 0, steps: 0 })
      expect(db.pragma('integrity_check', { simple: true })).toBe('ok')
      db.close()
    }
    const studio = await openStudio(file)
    const { materials } = await studio.ask('materials.list', {})
    expect(materials[0]?.onHand).toBeGreaterThanOrEqual(acknowledged.length * 1_000)
    await studio.close()
  })
})
