import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import {
  closeToast,
  holdToasts,
  onToasts,
  readToasts,
  showToast,
} from '../../../renderer/ui/toast-store.ts'

beforeEach(() => vi.useFakeTimers())
afterEach(() => {
  for (const { id } of readToasts()) closeToast(id)
  vi.useRealTimers()
})

describe('toasts', () => {
  it('go by themselves after a while', () => {
    showToast({ text: 'Made 4 pairs' })
    vi.advanceTimersByTime(9_000)
    expect(readToasts()).toHaveLength(1)
    vi.advanceTimersByTime(2_000)
    expect(readToasts()).toHaveLength(0)
  })

  it('stay when they tell of a refusal', () => {
    showToast({ text: 'Nothing to undo.', tone: 'refused' })
    vi.advanceTimersByTime(60_000)
    expect(readToasts()).toHaveLength(1)
  })

  it('wait while they are looked at, and go once they are not', () => {
    showToast({ text: 'Made 4 pairs' })
    holdToasts(true)
    vi.advanceTimersByTime(60_000)
    expect(readToasts()).toHaveLength(1)
    holdToasts(false)
    expect(readToasts()).toHaveLength(0)
  })

  it('go in time again after one that was looked at is closed', () => {
    const id = showToast({ text: 'Made 4 pairs' })
    holdToasts(true)
    closeToast(id)
    showToast({ text: 'Made 2 pairs' })
    vi.advanceTimersByTime(11_000)
    expect(readToasts()).toHaveLength(0)
  })

  it('are three at most, the newest kept', () => {
    for (const text of ['a', 'b', 'c', 'd']) showToast({ text })
    expect(readToasts().map(({ text }) => text)).toEqual(['b', 'c', 'd'])
  })

  it('offer the way back of the latest step only, beside what is no step', () => {
    const undo = { label: 'Undo', run: () => {} }
    showToast({ text: 'Entered OR-0001', isStep: true, action: undo })
    showToast({ text: 'Saved tags.pdf' })
    showToast({ text: 'Entered OR-0002', isStep: true, action: undo })
    expect(readToasts().map(({ text }) => text)).toEqual(['Saved tags.pdf', 'Entered OR-0002'])
  })

  it('tell those who listen, until they stop', () => {
    const heard = vi.fn()
    const stop = onToasts(heard)
    const id = showToast({ text: 'a' })
    closeToast(id)
    stop()
    showToast({ text: 'b' })
    expect(heard).toHaveBeenCalledTimes(2)
  })
})
