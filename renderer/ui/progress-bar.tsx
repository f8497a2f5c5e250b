import { Button } from './button.tsx'
import './progress-bar.css'

/** How far long work has come, and the way out of it. `done` from 0 to 1; absent while that is unknown. */
export function ProgressBar({
  label,
  done,
  onCancel,
}: Readonly<{ label: string; done?: number | undefined; onCancel?: (() => void) | undefined }>) {
  return (
    <div className="progress">
      <label className="progress-label">
        <span>
          {label}
          {done !== undefined && ` ${Math.floor(done * 100)} %`}
        </span>
        <progress max={1} {...(done === undefined ? {} : { value: done })} />
      </label>
      {onCancel !== undefined && (
        <Button small onClick={onCancel}>
          Cancel
        </Button>
      )}
    </div>
  )
}
