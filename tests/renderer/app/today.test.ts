import { describe, expect, it } from 'vitest'
import { todayDate } from '../../../renderer/app/today.ts'

describe('todayDate', () => {
  it('is the day of this machine’s clock, not of Greenwich', () => {
    expect(todayDate(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05')
    expect(todayDate(new Date(2026, 0, 6, 0, 1))).toBe('2026-01-06')
  })
})
