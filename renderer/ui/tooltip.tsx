import { Tooltip as Base } from '@base-ui/react/tooltip'
import type { ReactElement, ReactNode } from 'react'
import './tooltip.css'

/**
 * A word more about a control, on hover and on focus. Never the only place where something is said.
 *
 * `children` is the control itself: one element that takes focus.
 */
export function Tooltip({
  says,
  children,
}: Readonly<{ says: ReactNode; children: ReactElement<Record<string, unknown>> }>) {
  return (
    <Base.Root>
      <Base.Trigger render={children} delay={400} />
      <Base.Portal>
        <Base.Positioner sideOffset={6} className="tooltip-place">
          <Base.Popup className="tooltip">{says}</Base.Popup>
        </Base.Positioner>
      </Base.Portal>
    </Base.Root>
  )
}
