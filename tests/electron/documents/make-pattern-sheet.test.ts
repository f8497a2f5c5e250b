import { describe, expect, it } from 'vitest'
import {
  laySheet,
  makePatternSheet,
} from '../../../electron/service/documents/pattern-sheet/make-pattern-sheet.ts'
import { sheetOfSample } from './sheet-of-sample.ts'

describe('makePatternSheet', () => {
  it('makes a PDF with all its fonts embedded, saying what it could not print', async () => {
    const data = sheetOfSample('Samphire studs', { maker: '한글' })
    const made = await makePatternSheet(laySheet(data), data, 0)
    const raw = Buffer.from(made.bytes).toString('latin1')
    expect(raw.startsWith('%PDF-')).toBe(true)
    expect(raw.match(/\/Type \/Page\b/g)).toHaveLength(made.pages)
    const fonts = raw.match(/\/Type \/FontDescriptor/g) ?? []
    expect(fonts.length).toBeGreaterThanOrEqual(3)
    expect(raw.match(/\/FontFile2? /g)).toHaveLength(fonts.length)
    expect(made.missingScripts).toEqual(['Korean'])
  })
})
