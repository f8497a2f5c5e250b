import { chooseTheme, useTheme } from '../../app/theme.ts'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'

/** How the studio looks on this machine. */
export function AppearanceSettings() {
  const theme = useTheme()
  return (
    <div className="settings-form">
      <SegmentedChoice
        label="Light"
        value={theme}
        options={[
          { value: 'system', label: 'as the system has it' },
          { value: 'light', label: 'by day' },
          { value: 'dark', label: 'by lamplight' },
        ]}
        onChange={chooseTheme}
      />
      <p className="quiet">Motion follows the system’s own setting for reduced motion.</p>
    </div>
  )
}
