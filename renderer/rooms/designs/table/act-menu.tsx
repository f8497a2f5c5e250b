import { Menu } from '@base-ui/react/menu'
import { useRef } from 'react'
import { Icon } from '../../../ui/icon.tsx'

/** One thing a menu does. */
export type MenuAct = Readonly<{
  name: string
  label: string
  key?: string | undefined
  disabled?: boolean
  run: () => void
}>

/** A button that opens a short list of acts, each with its key; `groups` is asked when it opens. */
export function ActMenu({
  label,
  groups,
}: Readonly<{ label: string; groups: () => readonly (readonly MenuAct[])[] }>) {
  // The list opens within the table and not at the end of the page, so that it stays in its landmark.
  const holder = useRef<HTMLDivElement>(null)
  return (
    <div ref={holder}>
      <Menu.Root>
        <Menu.Trigger className="button button-plain button-small">
          <span>{label}</span>
          <Icon name="down" size={16} />
        </Menu.Trigger>
        <Menu.Portal container={holder}>
          <Menu.Positioner className="list-place" sideOffset={4} align="start">
            <Menu.Popup className="list-popup table-menu">
              <ActGroups groups={groups} />
            </Menu.Popup>
          </Menu.Positioner>
        </Menu.Portal>
      </Menu.Root>
    </div>
  )
}

function ActGroups({ groups }: Readonly<{ groups: () => readonly (readonly MenuAct[])[] }>) {
  return groups().map((acts, at) => (
    <Menu.Group key={acts[0]?.name ?? at} className="table-menu-group">
      {acts.map(({ name, label, key, disabled, run }) => (
        <Menu.Item
          key={name}
          className="table-menu-item"
          disabled={disabled ?? false}
          onClick={run}
        >
          <span>{label}</span>
          {key !== undefined && <kbd>{key}</kbd>}
        </Menu.Item>
      ))}
    </Menu.Group>
  ))
}
