import { describe, expect, it } from 'vitest'
import { isSameDraft } from '../../../renderer/app/same-draft.ts'

describe('a draft', () => {
  it('is the same while nothing of it was typed anew', () => {
    const draft = { name: 'tar' }
    expect(isSameDraft(draft, draft)).toBe(true)
    expect(isSameDraft(['5', undefined, draft], ['5', undefined, draft])).toBe(true)
    expect(isSameDraft(undefined, undefined)).toBe(true)
  })

  it('is another once any of its values is', () => {
    expect(isSameDraft({ name: 'tar' }, { name: 'tar' })).toBe(false)
    expect(isSameDraft(['5', ''], ['5', 'x'])).toBe(false)
    expect(isSameDraft(['5'], ['5', undefined])).toBe(false)
    expect(isSameDraft(undefined, ['5'])).toBe(false)
  })
})
