import type { ReactNode } from 'react'
import type { Refusal } from '../../shared-core/refusal.ts'
import { Button } from './button.tsx'
import type { IconName } from './icon-paths.ts'
import { RefusalNotice } from './notice.tsx'
import { SideSheet } from './side-sheet.tsx'

type FormSheetProps = Readonly<{
  title: string
  /** What is refused and stands at none of its fields. */
  above: Refusal | undefined
  /** What the button that keeps it all says. */
  label?: string
  icon?: IconName
  isBusy: boolean
  onSave: () => void
  /** Buttons beside it. */
  others?: ReactNode
  onClose: () => void
  children: ReactNode
}>

/** A sheet that is filled in: one button keeps all that was typed, and leads to what is refused. */
export function FormSheet({
  title,
  above,
  label = 'Save',
  icon,
  isBusy,
  onSave,
  others,
  onClose,
  children,
}: FormSheetProps) {
  return (
    <SideSheet
      open
      title={title}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" icon={icon} busy={isBusy} onClick={onSave}>
            {label}
          </Button>
          {others}
        </>
      }
    >
      {above !== undefined && <RefusalNotice refusal={above} />}
      {children}
    </SideSheet>
  )
}
