import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { bounds, validations } from '../../bench/thread-validation.ts'
import { isKept, TOLERANCE, validationPage } from '../../bench/thread-validation-page.ts'

describe('thread predicted for published pieces', () => {
  it.each(validations())('lies within 15 % of what is published for $id', (row) => {
    expect(Math.abs(row.predictedMm - row.statedMm) / row.statedMm).toBeLessThan(TOLERANCE)
  })

  it('keeps every bound the vaguer sources set', () => {
    expect(bounds().filter((bound) => !isKept(bound))).toEqual([])
  })

  it('is told on the page as it is computed', () => {
    const page = readFileSync(
      new URL('../../../docs/thread-validation.md', import.meta.url),
      'utf8',
    )
    expect(page).toBe(validationPage())
  })
})
