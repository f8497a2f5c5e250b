import { describe, expect, it } from 'vitest'
import {
  bindFault,
  isBound,
  keyName,
  type PressedKey,
  roleOfKey,
} from '../../../renderer/rooms/bench/reader/key-roles.ts'

const press = (key: string, code: string, more: Partial<PressedKey> = {}): PressedKey => ({
  ...{ key, code, ctrlKey: false, altKey: false, metaKey: false },
  ...more,
})
const none = { nextKeys: [], backKeys: [] }

describe('keys at the reader', () => {
  it('go on, back and pause without being set', () => {
    const roles = [
      press(' ', 'Space'),
      press('Enter', 'NumpadEnter'),
      press('ArrowDown', 'ArrowDown'),
      press('Backspace', 'Backspace'),
      press('ArrowLeft', 'ArrowLeft'),
      press('p', 'KeyP'),
    ].map((key) => roleOfKey(key, none))
    expect(roles).toEqual(['next', 'next', 'next', 'back', 'back', 'pause'])
  })

  it('are left to the studio with Ctrl, Alt or the system key', () => {
    expect(roleOfKey(press('ArrowLeft', 'ArrowLeft', { altKey: true }), none)).toBeUndefined()
  })

  it('include a pedal by where its key sits, whatever it writes', () => {
    const bound = { nextKeys: ['KeyB'], backKeys: ['F13'] }
    expect(roleOfKey(press('B', 'KeyB'), bound)).toBe('next')
    expect(roleOfKey(press('и', 'KeyB'), bound)).toBe('next')
    expect(roleOfKey(press('F13', 'F13'), bound)).toBe('back')
    expect(isBound(press('b', 'KeyB'), bound)).toBe(true)
    expect(isBound(press(' ', 'Space'), bound)).toBe(false)
  })
})

describe('a key for a pedal', () => {
  it('is taken when it has no role', () => {
    expect(bindFault(press('b', 'KeyB'), 'next', none)).toBeUndefined()
  })

  it('is told when it has one, the same or another', () => {
    expect(bindFault(press(' ', 'Space'), 'next', none)).toContain('moves on already')
    expect(bindFault(press('p', 'KeyP'), 'next', none)).toContain('pauses the clock')
    const bound = { nextKeys: ['KeyB'], backKeys: [] }
    expect(bindFault(press('b', 'KeyB'), 'back', bound)).toContain('B moves on')
  })

  it('is refused with Ctrl, and Tab is left where it is', () => {
    expect(bindFault(press('b', 'KeyB', { ctrlKey: true }), 'next', none)).toContain(
      'one plain key',
    )
    expect(bindFault(press('Tab', 'Tab'), 'next', none)).toContain('from control to control')
  })

  it('waits while only Shift or the like is down', () => {
    expect(bindFault(press('Shift', 'ShiftLeft'), 'next', none)).toBe('')
  })

  it('has a name that people know', () => {
    expect(['KeyB', 'Digit4', 'F13', 'PageDown', 'Numpad4', ' '].map(keyName)).toEqual([
      'B',
      '4',
      'F13',
      'Page Down',
      'Numpad 4',
      'Space',
    ])
  })
})
