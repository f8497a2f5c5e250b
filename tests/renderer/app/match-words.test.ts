import { describe, expect, it } from 'vitest'
import { matchWords } from '../../../renderer/app/match-words.ts'

describe('matchWords', () => {
  it('finds a word by its beginning', () => {
    expect(matchWords('tide', 'Tidewrack diamond earrings')).toBeGreaterThan(0)
  })

  it('wants every typed word', () => {
    expect(matchWords('tide cuff', 'Tidewrack diamond earrings')).toBe(0)
  })

  it('takes no heed of case and accents', () => {
    expect(matchWords('OEILLET rose', 'Oeillet Rosé')).toBeGreaterThan(0)
  })

  it('ranks a name that begins with the word above one that only holds it', () => {
    expect(matchWords('reed', 'Reedbed fringe')).toBeGreaterThan(matchWords('reed', 'unagreed'))
  })

  it('ranks the whole name highest', () => {
    expect(matchWords('brine', 'brine')).toBeGreaterThan(matchWords('brine', 'brine, dark'))
  })

  it('finds everything when nothing is typed', () => {
    expect(matchWords('  ', 'anything')).toBeGreaterThan(0)
  })
})
