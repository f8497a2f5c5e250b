import { afterAll, describe, expect, it } from 'vitest'
import { findForm, referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { beadCv, poolWeighings } from '../../../../shared-core/beads/calibration.ts'
import { massMg } from '../../../../shared-core/units/mass.ts'
import { engineInputs } from '../engine-inputs.ts'
import { openEngine } from '../open-engine.ts'
import { smallBody } from '../small-workshop.ts'

const { ask, refusal, close } = await openEngine()
afterAll(close)

const FORM = 'cylinder-11/0'
const cylinderForm = findForm(referenceTables, FORM) ?? neverForm()
function neverForm(): never {
  throw new Error('expected the cylinder in the tables')
}

describe('weights and holes', () => {
  const sent = { beads: 200, grossMg: 1_010, tareMg: 0, digitMg: 10 }

  it('pools weighings as the core does', async () => {
    const weighing = { ...sent, grossMg: massMg(1_010), tareMg: massMg(0) }
    const pooled = poolWeighings([weighing, weighing], beadCv(cylinderForm))
    expect(await ask('engine.calibrate', { formId: FORM, weighings: [sent, sent] })).toEqual(pooled)
  })

  it('falls back on the table without weighings', async () => {
    const { beadsPerGram, weighings } = await ask('engine.calibrate', {
      formId: FORM,
      weighings: [],
    })
    expect(beadsPerGram).toEqual(cylinderForm.beadsPerGram)
    expect(weighings).toBe(0)
  })

  it('counts a tube by its own weighings: 200 beads in 1.01 g make 992 in 5.01 g', async () => {
    const { netMg, count } = await ask('engine.countByWeight', {
      formId: FORM,
      weighings: [sent],
      grossMg: 6_010,
      tareMg: 1_000,
      digitMg: 10,
    })
    expect(netMg).toBe(5_010)
    expect(count.value).toBe(992)
    expect(count.low).toBeLessThan(count.value)
    expect(count.high).toBeGreaterThan(count.value)
  })

  it('asks for more beads the nearer a count must come', async () => {
    const beads = async (accuracyPercent: number) =>
      (await ask('engine.beadsToCount', { formId: FORM, accuracyPercent, digitMg: 10 })).beads
    expect(await beads(0.5)).toBeGreaterThan(await beads(1))
    expect(await beads(1)).toBeGreaterThan(await beads(5))
  })

  it('fills a hole pass by pass, sooner with a doubled thread', async () => {
    const fill = (strands: 1 | 2) =>
      ask('engine.holeFill', { ...engineInputs['engine.holeFill'], strands, passes: 40 })
    const [single, doubled] = [await fill(1), await fill(2)]
    expect(doubled.holds.value).toBeLessThan(single.holds.value)
    for (const { states, sticksAt, holds, advice } of [single, doubled]) {
      expect(sticksAt).toBe(holds.value + 1)
      expect(states.indexOf('full')).toBe(holds.value)
      expect(advice).not.toBeNull()
    }
  })

  it.each([
    ['weighing-implausible', 'engine.calibrate', { weighings: [{ ...sent, beads: 2 }] }],
    ['weighing-tare-over-gross', 'engine.countByWeight', { tareMg: 9_000 }],
    ['unknown-thread', 'engine.holeFill', { threadId: 'gossamer' }],
    ['unknown-needle', 'engine.holeFill', { needleSize: '99' }],
  ] as const)('refuses %s', async (code, name, wrong) => {
    expect((await refusal(name, { ...engineInputs[name], ...wrong }))?.code).toBe(code)
  })
})

describe('charts and words', () => {
  it('reads a word chart back to the chart it was written from', async () => {
    const { chart } = await ask('engine.outline', {
      kind: 'oval',
      stitch: 'brick',
      size: { widthMm: 30, heightMm: 40, formId: FORM, threadId: 'braided-6lb' },
    })
    const { text } = await ask('engine.writeWords', { chart })
    const read = await ask('engine.readWords', { stitch: 'brick', text })
    expect(read.faults).toEqual([])
    expect(read.chart).toEqual(chart)
  })

  it('says where beads lie and which touch, both ways', async () => {
    const { beads, outline, widthMm } = await ask(
      'engine.geometry',
      engineInputs['engine.geometry'],
    )
    expect(beads.map(({ label, touches }) => [label, touches])).toEqual([
      ['A', [1, 3]],
      ['B', [0, 2, 3, 4]],
      ['B', [1, 4]],
      ['A', [0, 1, 4]],
      ['A', [1, 2, 3]],
    ])
    expect(outline).toHaveLength(1)
    expect(widthMm.value).toBeCloseTo(3 * cylinderForm.diameterMm.value, 6)
  })

  it('refuses a chart of more cells than it holds before it makes room for them', async () => {
    const rows = Array.from({ length: 50 }, () => ({ start: 0, cells: '100000A' }))
    const error = await refusal('engine.geometry', {
      chart: { stitch: 'square', rows },
      formId: FORM,
    })
    expect(error).toMatchObject({ code: 'chart-too-large', field: 'chart' })
  })
})

describe('a design', () => {
  it('is read with forms, weighings and a pace that are sent along', async () => {
    const form = { ...plainForm, id: 'own', name: 'Ours', lengthMm: spread(2.6) }
    const body = {
      ...smallBody,
      palette: smallBody.palette.map((slot) => ({ ...slot, formId: 'own' })),
      parts: smallBody.parts.map((part) =>
        part.kind === 'panel' ? { ...part, formId: 'own' } : part,
      ),
    }
    const plain = await ask('engine.read', { body: smallBody })
    const weighings = { A: [{ beads: 200, grossMg: 1_010, tareMg: 0, digitMg: 10 }] }
    const read = await ask('engine.read', { body, tables: { forms: [form] }, weighings })
    expect(read.heightMm.value).toBeGreaterThan(1.5 * plain.heightMm.value)
    expect(read.counts[0]?.massMg.basis).toBe('measured')
    expect(read.counts[1]?.massMg.basis).toBe('estimated')
  })

  it('learns a pace that a design is then read with', async () => {
    const sessions = Array.from({ length: 20 }, () => ({
      work: 'brick' as const,
      beads: 240,
      rows: 12,
      units: 0,
      seconds: 4_800,
    }))
    const pace = await ask('engine.learnPace', { sessions })
    expect(pace.perBeadS.brick.basis).toBe('measured')
    const [before, after] = [
      await ask('engine.read', { body: smallBody }),
      await ask('engine.read', { body: smallBody, pace }),
    ]
    expect(after.labour.stitchingS.value).toBeGreaterThan(before.labour.stitchingS.value)
  })

  it('refuses a form whose hole is wider than the bead, and a pace that runs backwards', async () => {
    const tables = { forms: [{ ...plainForm, holeMm: spread(9) }] }
    expect(await refusal('engine.read', { body: smallBody, tables })).toMatchObject({
      code: 'bead-hole-too-wide',
      field: 'tables.forms.0.holeMm',
    })
    const { pace } = await ask('engine.tables', {})
    const wrong = { ...pace, setUpS: { ...pace.setUpS, low: 9_000 } }
    expect(await refusal('engine.read', { body: smallBody, pace: wrong })).toMatchObject({
      code: 'pace-range',
      field: 'pace.setUpS',
    })
  })
})

// The reference says of each form how well it is known; a form that is sent does not.
const { evidence: _, ...plainForm } = { evidence: '', ...cylinderForm }

const spread = (value: number) => ({ value, low: value, high: value, basis: 'measured' as const })
