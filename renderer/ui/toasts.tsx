import { useSyncExternalStore } from 'react'
import { Button, IconButton } from './button.tsx'
import { closeToast, holdToasts, onToasts, readToasts, type Toast } from './toast-store.ts'
import './toasts.css'

/** Where toasts appear and are spoken. Stands once, in the shell; anything may call `showToast`. */
export function Toasts() {
  const toasts = useSyncExternalStore(onToasts, readToasts)
  return (
    <section
      className="toasts"
      aria-label="What was just done"
      aria-live="polite"
      onMouseEnter={() => holdToasts(true)}
      onMouseLeave={({ currentTarget }) => holdToasts(currentTarget.matches(':focus-within'))}
      onFocus={() => holdToasts(true)}
      onBlur={({ currentTarget, relatedTarget }) =>
        // From one of its buttons to the next the focus has not left.
        holdToasts(currentTarget.contains(relatedTarget) || currentTarget.matches(':hover'))
      }
    >
      {toasts.map((toast) => (
        <ToastCard key={toast.id} toast={toast} />
      ))}
    </section>
  )
}

function ToastCard({ toast: { id, text, action, tone } }: Readonly<{ toast: Toast }>) {
  return (
    <div className={`toast toast-${tone}`}>
      <p className="toast-text">{text}</p>
      {action !== undefined && (
        <Button
          small
          kind="quiet"
          onClick={() => {
            closeToast(id)
            action.run()
          }}
        >
          {action.label}
        </Button>
      )}
      <IconButton icon="close" label="Close" onClick={() => closeToast(id)} />
    </div>
  )
}
