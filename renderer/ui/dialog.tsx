import { Dialog as Base } from '@base-ui/react/dialog'
import type { ReactNode } from 'react'
import './dialog.css'

/**
 * A question that stops everything else: only before something that cannot be undone, and at the first start.
 *
 * Without `onClose` it can only be answered, not closed.
 */
export function Dialog({
  open,
  title,
  children,
  actions,
  onClose,
}: Readonly<{
  open: boolean
  title: string
  children: ReactNode
  actions: ReactNode
  onClose?: (() => void) | undefined
}>) {
  return (
    <Base.Root open={open} onOpenChange={(next) => !next && onClose?.()} disablePointerDismissal>
      <Base.Portal>
        <Base.Backdrop className="dialog-dim" />
        <Base.Popup className="dialog">
          <Base.Title className="dialog-title">{title}</Base.Title>
          <div className="dialog-body">{children}</div>
          <div className="dialog-actions">{actions}</div>
        </Base.Popup>
      </Base.Portal>
    </Base.Root>
  )
}
