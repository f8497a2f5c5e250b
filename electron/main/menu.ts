import { app, Menu, type MenuItemConstructorOptions } from 'electron'

import { menuRooms, type ShellCommand } from '../../shared-core/contract/shell-commands.ts'

/** The menu bar: the system's own entries by role, ours as commands to the page. */
export function setMenu(send: (command: ShellCommand) => void): void {
  const isMac = process.platform === 'darwin'
  Menu.setApplicationMenu(
    Menu.buildFromTemplate([
      ...(isMac ? [{ role: 'appMenu' } as const] : []),
      { label: 'File', submenu: [{ role: isMac ? 'close' : 'quit' }] },
      { label: 'Edit', submenu: editItems(send) },
      { label: 'Go', submenu: goItems(send) },
      { label: 'View', submenu: viewItems() },
      { role: 'windowMenu' },
    ]),
  )
}

function editItems(send: (command: ShellCommand) => void): MenuItemConstructorOptions[] {
  return [
    { label: 'Undo', accelerator: 'CmdOrCtrl+Z', click: () => send({ kind: 'undo' }) },
    { label: 'Redo', accelerator: 'CmdOrCtrl+Shift+Z', click: () => send({ kind: 'redo' }) },
    { type: 'separator' },
    { role: 'cut' },
    { role: 'copy' },
    { role: 'paste' },
    { role: 'selectAll' },
  ]
}

function goItems(send: (command: ShellCommand) => void): MenuItemConstructorOptions[] {
  const rooms = menuRooms.map((room, index): MenuItemConstructorOptions => {
    const label = room.charAt(0).toUpperCase() + room.slice(1)
    const click = () => send({ kind: 'open-room', room })
    return index < 9 ? { label, click, accelerator: `CmdOrCtrl+${index + 1}` } : { label, click }
  })
  return [
    { label: 'Find a command', accelerator: 'CmdOrCtrl+K', click: () => send({ kind: 'find' }) },
    { type: 'separator' },
    ...rooms,
  ]
}

function viewItems(): MenuItemConstructorOptions[] {
  const forMakersOfTheStudio: MenuItemConstructorOptions[] = app.isPackaged
    ? []
    : [{ type: 'separator' }, { role: 'reload' }, { role: 'toggleDevTools' }]
  return [
    { role: 'resetZoom' },
    { role: 'zoomIn' },
    { role: 'zoomOut' },
    { type: 'separator' },
    { role: 'togglefullscreen' },
    ...forMakersOfTheStudio,
  ]
}
