import type { ReaderSettings } from './reader-settings.ts'

/** What a key does at the reader. */
export type KeyRole = 'next' | 'back' | 'pause'

/** A key as it is pressed. */
export type PressedKey = Pick<KeyboardEvent, 'key' | 'code' | 'ctrlKey' | 'altKey' | 'metaKey'>

const USUAL: Readonly<Record<string, KeyRole>> = {
  ' ': 'next',
  Enter: 'next',
  ArrowRight: 'next',
  ArrowDown: 'next',
  PageDown: 'next',
  Backspace: 'back',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  PageUp: 'back',
  p: 'pause',
  P: 'pause',
}

type Bound = Pick<ReaderSettings, 'nextKeys' | 'backKeys'>

/** The name a key is kept by: where it sits on the keyboard, else what it writes. */
export function keyCode({ code, key }: PressedKey): string {
  return code === '' ? key : code
}

/** What a key does; nothing with Ctrl, Alt or the system's key, which are the studio's own. */
export function roleOfKey(pressed: PressedKey, { nextKeys, backKeys }: Bound): KeyRole | undefined {
  if (pressed.ctrlKey || pressed.altKey || pressed.metaKey) return undefined
  const code = keyCode(pressed)
  if (nextKeys.includes(code)) return 'next'
  if (backKeys.includes(code)) return 'back'
  return Object.hasOwn(USUAL, pressed.key) ? USUAL[pressed.key] : undefined
}

/** Whether the key was bound by the maker: a pedal works wherever the focus is. */
export function isBound(pressed: PressedKey, { nextKeys, backKeys }: Bound): boolean {
  const code = keyCode(pressed)
  return nextKeys.includes(code) || backKeys.includes(code)
}

const WORDS: Readonly<Record<KeyRole, string>> = {
  next: 'moves on',
  back: 'goes back',
  pause: 'pauses the clock',
}

/** Why a key cannot be bound for a role, in a sentence; `undefined` when it can. */
export function bindFault(
  pressed: PressedKey,
  role: 'next' | 'back',
  bound: Bound,
): string | undefined {
  if (['Control', 'Alt', 'Meta', 'Shift', 'AltGraph'].includes(pressed.key)) return ''
  const name = keyName(keyCode(pressed))
  if (pressed.ctrlKey || pressed.altKey || pressed.metaKey) {
    return `With Ctrl, Alt or the system key, ${name} belongs to the studio. Set the pedal to one plain key.`
  }
  if (pressed.key === 'Tab')
    return 'Tab goes from control to control. Set the pedal to another key.'
  const has = roleOfKey(pressed, bound)
  if (has === undefined) return undefined
  if (has === role) return `${name} ${WORDS[has]} already: the pedal works as it is.`
  return `${name} ${WORDS[has]}. Set the pedal to another key, or take ${name} away there first.`
}

/** A key's name for people: `B`, `F13`, `Numpad 4`. */
export function keyName(code: string): string {
  if (code === ' ') return 'Space'
  const plain = code.replace(/^(Key|Digit)(?=.$)/, '')
  return plain.replace(/([a-z])([A-Z0-9])/g, '$1 $2')
}
