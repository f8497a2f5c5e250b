import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseStrandBeads } from '../../../shared-core/stitches/strand/parse-strand-beads.ts'
import { readStrandBeads } from '../../../shared-core/stitches/strand/strand-beads.ts'

describe('parseStrandBeads', () => {
  it.each([
    ['12A 1B 3C', '12A 1B 3C', 16],
    ['12a, 1b; 3c', '12A 1B 3C', 16],
    ['12 A + 1 B', '12A 1B', 13],
    ['12×A 1xB', '12A 1B', 13],
    ['12A1B3C', '12A 1B 3C', 16],
    ['A B B', '1A 2B', 3],
    [' 4A\n4A ', '8A', 8],
  ])('reads %j as %s', (text, beads, count) => {
    expect(parseStrandBeads(text, 3)).toEqual({ ok: true, value: { beads, count } })
  })

  it.each([
    ['', 'strand-empty'],
    [' , ', 'strand-empty'],
    ['12', 'strand-unreadable'],
    ['12A 0B', 'strand-unreadable'],
    ['12A ?', 'strand-unreadable'],
    ['12D', 'strand-slot'],
    ['12AA', 'strand-slot'],
    ['99999A 2B', 'strand-too-long'],
  ])('refuses %j with %s', (text, code) => {
    expect(parseStrandBeads(text, 3)).toMatchObject({ ok: false, error: { code } })
  })

  it('says which slots there are', () => {
    const read = parseStrandBeads('1D', 3)
    expect(read.ok ? '' : read.error.next).toContain('A to C')
  })

  it('writes what the store reads as the same beads', () => {
    const anyRuns = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 40 }), fc.constantFrom('A', 'B', 'c')),
      {
        minLength: 1,
        maxLength: 12,
      },
    )
    const gap = fc.constantFrom(' ', ', ', ' + ', '\n')
    fc.assert(
      fc.property(anyRuns, gap, (runs, between) => {
        const read = parseStrandBeads(runs.map(([n, slot]) => `${n}${slot}`).join(between), 3)
        if (!read.ok) throw new Error(read.error.message)
        const slots = runs.flatMap(([n, slot]) =>
          Array.from({ length: n }, () => slot.toUpperCase().charCodeAt(0) - 65),
        )
        expect(Array.from(readStrandBeads(read.value.beads) ?? [])).toEqual(slots)
        expect(read.value.count).toBe(slots.length)
      }),
    )
  })
})
