import { type ButtonHTMLAttributes, type ReactNode, type Ref, useEffect, useRef } from 'react'
import { Icon } from './icon.tsx'
import type { IconName } from './icon-paths.ts'
import { leadToRefused, leadToTold } from './refused-field.ts'
import './button.css'

/** How much a button asks to be pressed. `primary`: the one main act of a screen. */
export type ButtonKind = 'primary' | 'plain' | 'quiet' | 'danger'

type Look = Readonly<{
  kind?: ButtonKind
  small?: boolean
  icon?: IconName | undefined
  children: ReactNode
}>

type ButtonProps = Look &
  Readonly<{
    /** Waits for an answer: stays in place, takes no second press, says so to a screen reader. */
    busy?: boolean
    /**
     * Keeps what is typed around it: while a field there is refused or lacks something it leads to that
     * field instead, and to one that is refused by the answer. The main act of a screen, a primary
     * button, does so without being told.
     */
    keeps?: boolean
    ref?: Ref<HTMLButtonElement>
  }> &
  ButtonHTMLAttributes<HTMLButtonElement>

export function Button({
  kind = 'plain',
  small = false,
  busy,
  keeps = kind === 'primary',
  icon,
  children,
  className,
  onClick,
  ...rest
}: ButtonProps) {
  const pressed = useLeadAfterAnswer(keeps && busy === true)
  return (
    <button
      type="button"
      {...rest}
      className={look({ kind, small }, className)}
      aria-busy={busy || undefined}
      aria-disabled={busy || rest['aria-disabled']}
      onClick={(event) => {
        if (busy === true) return
        pressed.current = event.currentTarget
        if (keeps && leadToRefused(event.currentTarget)) {
          event.preventDefault()
          return
        }
        onClick?.(event)
      }}
    >
      {icon !== undefined && <Icon name={icon} />}
      <span>{children}</span>
    </button>
  )
}

/** Leads to what the answer refused, where she has not gone on to another field meanwhile. */
function useLeadAfterAnswer(isWaiting: boolean) {
  const pressed = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    if (!isWaiting) return
    return () => {
      const button = pressed.current
      if (button !== null && document.activeElement === button) leadToTold(button)
    }
  }, [isWaiting])
  return pressed
}

/** A link that looks like a button: it goes somewhere and changes nothing. */
export function ButtonLink({
  kind = 'plain',
  small = false,
  icon,
  href,
  children,
}: Look & Readonly<{ href: string }>) {
  return (
    <a className={look({ kind, small })} href={href}>
      {icon !== undefined && <Icon name={icon} />}
      <span>{children}</span>
    </a>
  )
}

/** A square button that shows an icon only; its name is spoken, and told on hover. */
export function IconButton({
  icon,
  label,
  className,
  ...rest
}: Readonly<{ icon: IconName; label: string; ref?: Ref<HTMLButtonElement> }> &
  Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'children'>) {
  return (
    <button
      type="button"
      {...rest}
      className={`button button-quiet button-icon ${className ?? ''}`}
      aria-label={label}
      title={label}
    >
      <Icon name={icon} />
    </button>
  )
}

function look(
  { kind, small }: Readonly<{ kind: ButtonKind; small: boolean }>,
  className: string | undefined = '',
): string {
  return `button button-${kind}${small ? ' button-small' : ''} ${className}`.trimEnd()
}
