import { type ReactNode, useEffect, useRef } from 'react'
import './room.css'

/**
 * The frame of a room: its title, its main acts, one main thing in the middle, and at the right the
 * figures that follow it.
 *
 * Focus goes to the title when the room is entered, so that a keyboard or a reader starts there.
 */
export function Room({
  title,
  back,
  note,
  actions,
  aside,
  asideLabel = 'Figures',
  children,
  fill = false,
}: Readonly<{
  title: string
  /** One step up, for something opened inside the room. */
  back?: Readonly<{ href: string; label: string }>
  /** A few quiet words beside the title: a date, a count, a state. */
  note?: ReactNode
  actions?: ReactNode
  aside?: ReactNode
  /** What the aside holds, where that is not figures alone. */
  asideLabel?: string
  children: ReactNode
  /** The middle takes the whole height and scrolls by itself: a drawing table, a row reader. */
  fill?: boolean
}>) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus({ preventScroll: true }), [])
  useEffect(() => {
    document.title = `${title} — Tallystrand`
  }, [title])
  return (
    <div className={`room${fill ? ' room-fill' : ''}`}>
      <header className="room-head">
        <div className="room-name">
          {back !== undefined && (
            <a className="room-back" href={back.href}>
              {back.label}
            </a>
          )}
          <h1 ref={heading} tabIndex={-1}>
            {title}
          </h1>
          {note !== undefined && <span className="room-note">{note}</span>}
        </div>
        {isShown(actions) && <div className="room-actions">{actions}</div>}
      </header>
      <div className={`room-body${isShown(aside) ? ' room-with-aside' : ''}`}>
        <div className="room-main">{children}</div>
        {isShown(aside) && (
          <aside className="room-aside" aria-label={asideLabel}>
            {aside}
          </aside>
        )}
      </div>
    </div>
  )
}

/** Whether there is something to show: a condition may have left nothing. */
function isShown(part: ReactNode): boolean {
  return part !== undefined && part !== null && part !== false
}
