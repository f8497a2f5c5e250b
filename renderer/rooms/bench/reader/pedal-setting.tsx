import { useEffect, useRef, useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { bindFault, keyCode, keyName } from './key-roles.ts'
import type { ReaderSettings } from './reader-settings.ts'

type PedalSettingProps = Readonly<{
  label: string
  move: 'next' | 'back'
  settings: ReaderSettings
  onLearning: (isLearning: boolean) => void
  onKeys: (keys: readonly string[]) => void
}>

/** Learns which key a pedal presses: press the button, then the pedal. */
export function PedalSetting({ label, move, settings, onLearning, onKeys }: PedalSettingProps) {
  const [isWaiting, setWaiting] = useState(false)
  const [fault, setFault] = useState('')
  const keys = move === 'next' ? settings.nextKeys : settings.backKeys
  const latest = useRef({ settings, keys, onKeys, onLearning })
  latest.current = { settings, keys, onKeys, onLearning }
  useEffect(() => {
    if (!isWaiting) return
    latest.current.onLearning(true)
    const onKey = (event: KeyboardEvent) => {
      event.preventDefault()
      event.stopPropagation()
      const { settings: bound, keys: had, onKeys: give } = latest.current
      if (event.key !== 'Escape') {
        const found = bindFault(event, move, bound)
        if (found === '') return
        setFault(found ?? '')
        if (found === undefined) give([...had, keyCode(event)])
      }
      setWaiting(false)
    }
    addEventListener('keydown', onKey, { capture: true })
    return () => {
      removeEventListener('keydown', onKey, { capture: true })
      latest.current.onLearning(false)
    }
  }, [isWaiting, move])
  return (
    <fieldset className="reader-pedal">
      <legend className="field-label">{label}</legend>
      <div className="reader-pedal-keys">
        {keys.map((key) => (
          <Button
            key={key}
            small
            icon="close"
            aria-label={`Take away ${keyName(key)}`}
            onClick={() => onKeys(keys.filter((one) => one !== key))}
          >
            {keyName(key)}
          </Button>
        ))}
        <Button small onClick={() => setWaiting(true)}>
          {isWaiting ? 'Press the pedal now' : 'Learn a key'}
        </Button>
      </div>
      <p className="reader-quiet" role="status">
        {isWaiting ? 'Press the pedal now, or Escape to leave it.' : fault}
      </p>
    </fieldset>
  )
}
