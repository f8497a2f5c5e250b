import { type IconName, iconPaths } from './icon-paths.ts'
import './icon.css'

/** A stroke icon of our own; always beside words or on a control that has a name, so it is hidden from readers. */
export function Icon({ name, size = 20 }: Readonly<{ name: IconName; size?: number }>) {
  return (
    <svg className="icon" viewBox="0 0 20 20" width={size} height={size} aria-hidden="true">
      <path d={iconPaths[name]} />
    </svg>
  )
}
