import { describe, expect, it } from 'vitest'
import { makeFormat } from '../../../renderer/app/format.ts'
import {
  draftBody,
  firstDraft,
  readTags,
  withShape,
} from '../../../renderer/rooms/designs/draft/draft.ts'
import { firstPalette } from '../../../renderer/rooms/designs/draft/first-palette.ts'
import { sizeRange, sizeWords } from '../../../renderer/rooms/designs/figures/size-words.ts'
import { arrangeDesigns, tagsOf } from '../../../renderer/rooms/designs/gallery/arrange-designs.ts'
import { copyName } from '../../../renderer/rooms/designs/gallery/copy-name.ts'
import type { DesignRow } from '../../../renderer/rooms/designs/gallery/design-row.ts'
import { cardWidth } from '../../../renderer/rooms/designs/gallery/use-card-width.ts'
import { countLevels } from '../../../renderer/rooms/designs/layers/count-levels.ts'
import { fillWords } from '../../../renderer/rooms/designs/page/fill-words.ts'
import { pieceMass } from '../../../renderer/rooms/designs/page/piece-mass.ts'
import { viewOf } from '../../../renderer/rooms/designs/page/views.ts'
import { cutWords } from '../../../renderer/rooms/designs/page/work-figures.ts'
import { workingWords } from '../../../renderer/rooms/designs/page/working-words.ts'
import { slotCalibrations } from '../../../renderer/rooms/designs/reading/slot-calibrations.ts'
import { roughBeads } from '../../../renderer/rooms/designs/reading/use-reading.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { estimated, measured } from '../../../shared-core/units/spread.ts'
import { earLoop, sampleChart, tidewrack } from './sample-body.ts'

const format = makeFormat({ decimal: ',', currency: 'EUR', today: '2026-11-25' })

function row(name: string, part: Partial<DesignRow>): DesignRow {
  return {
    id: `des_${name.toLowerCase()}00000`,
    name,
    unitName: 'pair',
    tags: [],
    version: 1,
    beads: 10,
    archived: false,
    savedAtMs: 0,
    makeable: null,
    sold: 0,
    takenMinor: 0,
    ...part,
  }
}

describe('arrangeDesigns', () => {
  const designs = [
    row('Reedbed', { tags: ['fringe'], makeable: 0, sold: 2, takenMinor: 8_400 }),
    row('Mudflat', { tags: ['band'], makeable: 5, sold: 2, takenMinor: 18_700 }),
    row('Sluice', { tags: ['band'] }),
  ]
  const named = (...args: Parameters<typeof arrangeDesigns>) =>
    arrangeDesigns(...args).map(({ name }) => name)

  it('orders by name, and by what stock allows with undecided ones last', () => {
    expect(named(designs, { order: 'name', tag: null })).toEqual(['Mudflat', 'Reedbed', 'Sluice'])
    expect(named(designs, { order: 'makeable', tag: null })).toEqual([
      'Mudflat',
      'Reedbed',
      'Sluice',
    ])
  })

  it('orders by pieces sold and by takings, equal ones by name', () => {
    expect(named(designs, { order: 'sold', tag: null })).toEqual(['Mudflat', 'Reedbed', 'Sluice'])
    const earned = [row('Ann', { takenMinor: 1 }), row('Zoe', { takenMinor: 2 })]
    expect(named(earned, { order: 'earned', tag: null })).toEqual(['Zoe', 'Ann'])
  })

  it('keeps designs of one tag', () => {
    expect(named(designs, { order: 'name', tag: 'band' })).toEqual(['Mudflat', 'Sluice'])
    expect(tagsOf(designs)).toEqual(['band', 'fringe'])
  })

  it('keeps designs whose name or tags answer every word typed, accents or not', () => {
    const typed = (wanted: string) => named(designs, { order: 'name', tag: null, wanted })
    expect(typed('BAND')).toEqual(['Mudflat', 'Sluice'])
    expect(typed('band mud')).toEqual(['Mudflat'])
    expect(typed('reédbed')).toEqual(['Reedbed'])
    expect(typed('brooch')).toEqual([])
  })
})

describe('copyName', () => {
  it('finds a name that is not taken', () => {
    expect(copyName('Mudflat', [])).toBe('Mudflat copy')
    expect(copyName('Mudflat copy', ['Mudflat copy'])).toBe('Mudflat copy 2')
  })
})

describe('cardWidth', () => {
  it('fills the row with as many cards as have room', () => {
    for (const gridPx of [228, 500, 993, 1648]) {
      const width = cardWidth(gridPx)
      const columns = Math.floor((gridPx + 20) / (width + 20))
      expect(width).toBeGreaterThanOrEqual(228)
      expect(columns * (width + 20) - 20).toBeLessThanOrEqual(gridPx)
    }
  })
})

describe('draftBody', () => {
  it('makes a pair of two copies with a palette for every slot', () => {
    const body = tidewrack()
    expect(body.parts[0]).toMatchObject({ kind: 'panel', copies: 2, mirrored: false })
    expect(body.palette.map(({ label }) => label)).toEqual(['A', 'B', 'C', 'D'])
    expect(new Set(body.palette.map(({ colourHex }) => colourHex)).size).toBe(4)
  })

  it('leaves out findings without a name', () => {
    const chart = sampleChart('tidewrack-chart.csv')
    const extras = [{ id: 'x', kind: 'finding', name: ' ', count: 1 }] as const
    expect(draftBody(chart, { ...firstDraft, extras }).extras).toEqual([])
  })

  it('names every slot up to the last, though one between is not used', () => {
    expect(firstPalette(['2A 1- 1AB'], 'cylinder-11/0').length).toBe(28)
  })
})

describe('withShape', () => {
  it('takes ear wires away with the pair, but nothing the maker has touched', () => {
    expect(withShape(firstDraft, 'one').extras.map(({ name }) => name)).toEqual(['Card'])
    const touched = { ...firstDraft, extras: [...firstDraft.extras] }
    expect(withShape(touched, 'one').extras).toBe(touched.extras)
    expect(withShape(firstDraft, 'one').unitName).toBe('piece')
  })
})

describe('readTags', () => {
  it('gives each tag once, without blanks', () => {
    expect(readTags(' earrings, brick ,, brick')).toEqual(['earrings', 'brick'])
  })
})

describe('sizeWords', () => {
  const size = (width: number, height: number) => ({
    widthMm: estimated(width - 1, width, width + 1),
    heightMm: estimated(height - 1, height, height + 1),
  })

  it('writes both measures in one unit', () => {
    expect(sizeWords(size(17.6, 38.44), format)).toBe('17,6 × 38,4 mm')
    expect(sizeWords(size(13, 135), format)).toBe('1,3 × 13,5 cm')
    expect(sizeRange(size(17.6, 38.4), format)).toBe('16,6 × 37,4 mm to 18,6 × 39,4 mm')
  })
})

describe('cutWords', () => {
  it('tells like lengths together, a few one by one, many by their range', () => {
    expect(cutWords([1230, 1230], format)).toBe('2 of 1,23 m')
    expect(cutWords([1330, 1320, 1350], format)).toBe('1,33 m + 1,32 m + 1,35 m')
    expect(cutWords([1200, 1300, 1400, 1250, 1260], format)).toBe('5 of 1,2 m to 1,4 m')
  })
})

describe('pieceMass', () => {
  const unitMassMg = (mg: number) => ({ unitMassMg: estimated(mg - 10, mg, mg + 10) })

  it('weighs one of a pair and says when it would drag', () => {
    const body = tidewrack()
    expect(pieceMass(unitMassMg(1_700), body)).toMatchObject({ isHalf: true, drags: false })
    expect(pieceMass(unitMassMg(1_700), body).massMg.value).toBe(850)
    expect(pieceMass(unitMassMg(20_000), body).drags).toBe(false)
    expect(pieceMass(unitMassMg(20_002), body).drags).toBe(true)
  })

  it('weighs a band whole, however heavy', () => {
    const band = draftBody(sampleChart('mudflat-chart.csv'), withShape(firstDraft, 'one'))
    expect(pieceMass(unitMassMg(40_000), band)).toMatchObject({ isHalf: false, drags: false })
  })
})

describe('fillWords', () => {
  it('says at which pass a hole sticks and what the fullest bead gets', () => {
    const body = { ...tidewrack(earLoop), threadId: 'nylon-f', needleSize: '10' }
    const read = readDesign(body, referenceTables)
    if (!read.ok) throw new Error(read.error.message)
    const [sentence, ...advice] = fillWords(body, read.value, referenceTables)
    const holds = read.value.parts[0]?.holds[0] ?? 0
    expect(sentence).toContain(`a hole holds ${holds} passes: pass ${holds + 1} sticks`)
    const full = read.value.warnings.filter(({ code }) => code === 'hole-full')
    expect(full.length).toBeGreaterThan(0)
    expect(advice).toEqual(full.map(({ next }) => next))
  })
})

describe('workingWords', () => {
  it('tells only what was chosen', () => {
    expect(workingWords({}, format)).toBe('Worked as the studio chooses')
    const some = { startRow: 11, startSide: 'left', lockEveryRow: true } as const
    expect(workingWords(some, format)).toBe('Starts at row 12, from the left, every row locked')
    expect(workingWords({ loopPasses: 2, endTailMm: 150, workingLengthMm: 1_600 }, format)).toBe(
      '2 times round a loop, a last tail of 15 cm, threads up to 1,6 m',
    )
  })
})

describe('slotCalibrations', () => {
  it('takes the weighing of the bead that fills a slot, and nothing for the others', () => {
    const beadsPerGram = measured(190, 196, 202)
    const found = slotCalibrations(tidewrack().palette, referenceTables, {
      materials: { 'slot:B': 'mat_brine00', 'slot:A': 'mat_slate00' },
      beadsPerGram: { mat_brine00: beadsPerGram },
    })
    expect(found).toEqual({ B: { beadsPerGram, cv: 0.04 } })
  })
})

describe('roughBeads', () => {
  it('counts the beads of one copy of every part without unpacking charts', () => {
    expect(roughBeads(tidewrack(earLoop))).toBe(167)
  })
})

describe('countLevels', () => {
  it('counts the beads of each level, lowest first', () => {
    expect(countLevels(Uint16Array.from([2, 1, 2, 5]))).toEqual([
      { level: 1, beads: 1 },
      { level: 2, beads: 2 },
      { level: 5, beads: 1 },
    ])
  })
})

describe('viewOf', () => {
  it('gives the view an address names, else the beads', () => {
    expect(viewOf('holes')).toBe('holes')
    expect(viewOf('nonsense')).toBe('beads')
    expect(viewOf(undefined)).toBe('beads')
  })
})
