import { useEffect, useRef } from 'react'
import { isTyping } from '../../../app/is-typing.ts'
import { isBound, type KeyRole, roleOfKey } from './key-roles.ts'
import type { ReaderSettings } from './reader-settings.ts'

type Heard = Readonly<{
  settings: ReaderSettings
  /** A pedal is being learnt: keys are not ours. */
  isLearning: boolean
  onRole: (role: KeyRole) => void
}>

/** Keys and pedals of the reader. A key held down moves once. */
export function useReaderKeys(heard: Heard): void {
  const latest = useRef(heard)
  latest.current = heard
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const { settings, isLearning, onRole } = latest.current
      if (isLearning || event.defaultPrevented) return
      const role = roleOfKey(event, settings)
      if (role === undefined || isForControl(event, settings)) return
      event.preventDefault()
      if (!event.repeat) onRole(role)
    }
    // On the way down: a dialog keeps arrow keys from what lies around it.
    addEventListener('keydown', onKey, { capture: true })
    return () => removeEventListener('keydown', onKey, { capture: true })
  }, [])
}

/** Whether the key belongs to the control that has the focus. */
function isForControl(event: KeyboardEvent, settings: ReaderSettings): boolean {
  const { target, key } = event
  if (isTyping(target)) return true
  if (isBound(event, settings) || !(target instanceof Element)) return false
  if (target.closest('[data-reader-own-keys]') !== null) return true
  const control = target.closest('button, a, input, select, [role], [tabindex="0"]')
  if (control === null || control.hasAttribute('data-reader-move')) return false
  if (control.matches('[role="dialog"], [role="document"]')) return false
  const isPress = key === ' ' || key === 'Enter'
  return isPress || !control.matches('button:not([role]), a')
}
