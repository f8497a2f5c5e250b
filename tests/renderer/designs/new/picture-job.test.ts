import { describe, expect, it } from 'vitest'
import { makeFormat } from '../../../../renderer/app/format.ts'
import { firstDraft } from '../../../../renderer/rooms/designs/draft/draft.ts'
import { differenceSentence } from '../../../../renderer/rooms/designs/new/picture/difference-sentence.ts'
import { pictureJob } from '../../../../renderer/rooms/designs/new/picture/picture-job.ts'
import {
  firstSettings,
  type PictureSettings,
} from '../../../../renderer/rooms/designs/new/picture/picture-settings.ts'
import { pictureSlots } from '../../../../renderer/rooms/designs/new/picture/picture-slots.ts'
import {
  type StockBead,
  stockBeads,
} from '../../../../renderer/rooms/designs/new/picture/stock-beads.ts'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { countBeads } from '../../../../shared-core/chart/count-slots.ts'
import type { Picture } from '../../../../shared-core/colour/picture/picture.ts'
import { checkPictureRequest } from '../../../../shared-core/colour/picture/picture-request.ts'
import { pictureToChart } from '../../../../shared-core/colour/picture/picture-to-chart.ts'
import { runSteps } from '../../../../shared-core/colour/picture/run-steps.ts'

const format = makeFormat({ decimal: ',', currency: 'EUR', today: '2026-11-25' })

/** Left half dark, right half light, the lower right quarter see-through. */
const halves: Picture = {
  width: 40,
  height: 20,
  rgba: Uint8Array.from({ length: 40 * 20 * 4 }, (_, i) => {
    const [x, y] = [Math.floor(i / 4) % 40, Math.floor(i / 160)]
    if (i % 4 === 3) return x >= 20 && y >= 10 ? 0 : 255
    return x < 20 ? 30 : 230
  }),
}

function bead(id: string, part: Partial<StockBead>): StockBead {
  return {
    id,
    code: id,
    name: id,
    kind: 'bead',
    formId: 'cylinder-11/0',
    colourHex: '#1e1e1e',
    finish: 'matte',
    lotsMatter: false,
    lowAt: null,
    tareMg: null,
    drawer: '',
    note: '',
    declaration: '',
    unit: 'mg',
    onHand: 5_000,
    reserved: 0,
    available: 5_000,
    lots: 1,
    valueMinor: 0,
    alert: 'none',
    beads: null,
    ...part,
  }
}

const night = bead('mat_night00', {})
const shell = bead('mat_shell00', { colourHex: '#e6e6e6', finish: 'gloss', available: 0 })
const others = [
  bead('mat_round00', { formId: 'round-8/0' }),
  bead('mat_thread0', { kind: 'thread' }),
  { ...night, id: 'mat_pale000', colourHex: null },
]

function made(part: Partial<PictureSettings>, source: 'stock' | 'free' = 'stock') {
  const settings = { ...firstSettings(halves), ...part }
  const context = {
    draft: firstDraft,
    source,
    beads: [night, shell],
    format,
    tables: referenceTables,
  }
  const job = pictureJob(settings, context)
  if (!job.ok) throw new Error(job.error.message)
  const request = checkPictureRequest({ ...job.value.asked, picture: halves })
  if (!request.ok) throw new Error(request.error[0]?.message)
  const outcome = runSteps(pictureToChart(request.value))
  if (outcome.kind !== 'done') throw new Error('It was cancelled.')
  return { job: job.value, made: outcome.value, slots: pictureSlots(job.value, outcome.value) }
}

describe('stockBeads', () => {
  it('takes beads of the form whose colour is known, and only those on hand when asked', () => {
    const all = [night, shell, ...others]
    const ids = (onHand: boolean) =>
      stockBeads(all, { formId: 'cylinder-11/0', onHand }).map(({ id }) => id)
    expect(ids(false)).toEqual(['mat_night00', 'mat_shell00'])
    expect(ids(true)).toEqual(['mat_night00'])
  })
})

describe('pictureJob', () => {
  it.each(['brick', 'peyote', 'square', 'loom', 'herringbone', 'right-angle-weave'] as const)(
    'keeps the proportion of the picture in %s',
    (stitch) => {
      const { job } = made({ stitch, across: '60 mm' })
      const [xs, ys] = [Array.from(job.asked.cells.x), Array.from(job.asked.cells.y)]
      const width = Math.max(...xs) - Math.min(...xs)
      const height = Math.max(...ys) - Math.min(...ys)
      expect(width / height).toBeGreaterThan(1.85)
      expect(width / height).toBeLessThan(2.2)
    },
  )

  it('refuses a size it cannot read, too many beads, and an empty drawer, each with its own words', () => {
    const code = (part: Partial<PictureSettings>, beads: readonly StockBead[] = [night]) => {
      const settings = { ...firstSettings(halves), ...part }
      const job = pictureJob(settings, {
        draft: firstDraft,
        source: 'stock',
        beads,
        format,
        tables: referenceTables,
      })
      return job.ok ? 'asked' : job.error.code
    }
    expect(code({ across: 'wide' })).toBe('picture-no-size')
    expect(code({ across: '3 m' })).toBe('new-too-many-beads')
    expect(code({}, [])).toBe('picture-no-beads')
    expect(code({ isEven: false, down: '' })).toBe('picture-no-size')
    expect(code({})).toBe('asked')
  })
})

describe('pictureSlots', () => {
  it('fills slots from stock where the picture has those colours, and leaves see-through parts empty', () => {
    const { made: chart, slots } = made({})
    expect(slots.palette.map(({ name, finish }) => [name, finish])).toEqual([
      ['mat_night00', 'matte'],
      ['mat_shell00', 'gloss'],
    ])
    expect(slots.materials).toEqual({ 'slot:A': 'mat_night00', 'slot:B': 'mat_shell00' })
    expect(slots.inStock.get('B')?.available).toBe(0)
    const beads = countBeads(fromChartJson(slots.chart))
    expect(beads).toBe(chart.palette.reduce((sum, { count }) => sum + count, 0))
    expect(beads).toBeLessThan(0.8 * chart.slots.length)
    expect(chart.meanDeltaE).toBeLessThan(1)
  })

  it('names free colours and fills nothing', () => {
    const { slots } = made({ colours: 2 }, 'free')
    expect(slots.palette.map(({ name }) => name)).toEqual(['black', 'light grey'])
    expect(slots.materials).toEqual({})
  })
})

describe('differenceSentence', () => {
  it('tells the mean and the worst difference in number and in words', () => {
    const told = { slots: new Uint16Array(0), palette: [], meanDeltaE: 3.14, worstDeltaE: 17 }
    expect(differenceSentence({ ...told, recoloured: 0 }, format)).toBe(
      'Mean colour difference 3,1 (CIEDE2000): close, seen when looked for. The bead farthest off: 17,0.',
    )
    expect(differenceSentence({ ...told, recoloured: 2 }, format)).toContain('2 beads took')
  })
})
