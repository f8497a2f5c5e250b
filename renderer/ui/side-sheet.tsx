import { Dialog as Base } from '@base-ui/react/dialog'
import { type ReactNode, useRef } from 'react'
import { IconButton } from './button.tsx'
import './side-sheet.css'

/**
 * A sheet at the right for one thing of a list: to read it or to change it while the list stays at hand.
 *
 * Not modal: the room behind it can still be used. The focus begins in its first field. Escape or its
 * close button puts it away; focus then goes back to where it came from.
 */
export function SideSheet({
  open,
  title,
  children,
  actions,
  onClose,
  wide = false,
}: Readonly<{
  open: boolean
  title: string
  children: ReactNode
  /** Buttons that stay in sight at the foot. */
  actions?: ReactNode
  onClose: () => void
  wide?: boolean
}>) {
  const body = useRef<HTMLDivElement>(null)
  return (
    <Base.Root
      open={open}
      modal={false}
      disablePointerDismissal
      onOpenChange={(next) => !next && onClose()}
    >
      <Base.Portal>
        <Base.Popup
          className={`side-sheet${wide ? ' side-sheet-wide' : ''}`}
          initialFocus={() => firstField(body.current)}
        >
          <header className="side-sheet-head">
            <Base.Title className="side-sheet-title">{title}</Base.Title>
            <Base.Close render={<IconButton icon="close" label="Close" />} />
          </header>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must scroll by key too */}
          <div ref={body} className="side-sheet-body" tabIndex={0}>
            {children}
          </div>
          {actions !== undefined && <footer className="side-sheet-actions">{actions}</footer>}
        </Base.Popup>
      </Base.Portal>
    </Base.Root>
  )
}

const FIELD =
  'input:not([tabindex="-1"], :disabled, [type="radio"]:not(:checked)), textarea:not(:disabled), [role="combobox"]'

/** Where typing begins; the sheet itself where there is nothing to type. */
function firstField(body: HTMLElement | null): HTMLElement | true {
  const asked = document.activeElement
  if (asked instanceof HTMLElement && body?.contains(asked) === true) return asked
  return body?.querySelector<HTMLElement>(FIELD) ?? true
}
