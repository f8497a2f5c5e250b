import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { entryId } from '../../../shared-core/beads/entry-id.ts'

describe('entryId', () => {
  it.each([
    ['Tide drop 3,5 mm', 'tide-drop-3-5-mm'],
    ['  Größe ½  ', 'gro-e-1-2'],
    ['ビーズ', 'own-entry'],
    ['11/0', '11-0'],
    [`${'a'.repeat(49)} drop`, 'a'.repeat(49)],
  ])('%s gives %s', (name, id) => {
    expect(entryId(name, [])).toBe(id)
  })

  it('adds the first free number where the id is taken', () => {
    expect(entryId('Tide drop', ['tide-drop', 'tide-drop-2', 'tide-drop-4'])).toBe('tide-drop-3')
  })

  it('is plain, short and never taken, whatever the names', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: 'grapheme', maxLength: 120 }), { maxLength: 30 }),
        (names) => {
          const taken: string[] = []
          for (const name of names) {
            const id = entryId(name, taken)
            expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
            expect(id.length).toBeLessThanOrEqual(60)
            expect(taken).not.toContain(id)
            taken.push(id)
          }
        },
      ),
    )
  })
})
