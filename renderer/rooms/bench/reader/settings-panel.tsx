import { Checkbox } from '../../../ui/checkbox.tsx'
import { Select } from '../../../ui/select.tsx'
import { NumberSetting } from './number-setting.tsx'
import { PedalSetting } from './pedal-setting.tsx'
import type { ReaderSettings } from './reader-settings.ts'
import { useLocalVoices } from './use-speech.ts'

type SettingsPanelProps = Readonly<{
  settings: ReaderSettings
  onChange: (more: Partial<ReaderSettings>) => void
  onLearning: (isLearning: boolean) => void
}>

/** What the maker sets at the reader: pedal, timer, pauses, rests, voice. */
export function SettingsPanel({ settings, onChange, onLearning }: SettingsPanelProps) {
  return (
    <div className="reader-settings">
      <h3>Keys and pedal</h3>
      <p className="reader-quiet">
        Space, Enter and the arrows right and down go on; Backspace and the arrows left and up go
        back; P pauses; Escape leaves.
      </p>
      <PedalSetting
        label="Pedal that goes on"
        move="next"
        {...{ settings, onLearning }}
        onKeys={(nextKeys) => onChange({ nextKeys })}
      />
      <PedalSetting
        label="Pedal that goes back"
        move="back"
        {...{ settings, onLearning }}
        onKeys={(backKeys) => onChange({ backKeys })}
      />
      <h3>Time</h3>
      <NumberSetting
        label="Timer leaves for a bead"
        unit="s"
        value={settings.beadS}
        range={[1, 120]}
        onValue={(beadS) => onChange({ beadS })}
        hint="It waits at new threads and ends."
      />
      <NumberSetting
        label="Clock stands after no step for"
        unit="min"
        value={settings.idleMin}
        range={[1, 120]}
        onValue={(idleMin) => onChange({ idleMin })}
        hint="Longer where a row takes longer."
      />
      <NumberSetting
        label="Reminder to rest every"
        unit="min"
        value={settings.restMin}
        range={[0, 240]}
        onValue={(restMin) => onChange({ restMin })}
        hint="0 for no reminder."
      />
      <VoiceSettings settings={settings} onChange={onChange} />
    </div>
  )
}

function VoiceSettings({ settings, onChange }: Omit<SettingsPanelProps, 'onLearning'>) {
  const voices = useLocalVoices()
  return (
    <>
      <h3>Voice</h3>
      {voices.length === 0 ? (
        <p className="reader-quiet">
          This computer has no voice that speaks without the web, so rows are not read aloud.
          Everything can be done without.
        </p>
      ) : (
        <>
          <Checkbox
            label="Read each row aloud"
            checked={settings.isSpoken}
            onChange={(isSpoken) => onChange({ isSpoken })}
          />
          <Select
            label="Voice"
            value={
              voices.find(({ voiceURI }) => voiceURI === settings.voice)?.voiceURI ??
              voices[0]?.voiceURI ??
              null
            }
            options={voices.map(({ voiceURI, name, lang }) => ({
              value: voiceURI,
              label: name,
              detail: lang,
            }))}
            onChange={(voice) => onChange({ voice })}
          />
          <NumberSetting
            label="Speed"
            unit="× usual"
            value={settings.rate}
            range={[0.5, 2]}
            onValue={(rate) => onChange({ rate })}
          />
        </>
      )}
    </>
  )
}
