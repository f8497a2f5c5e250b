/** The rooms that the menu can open, in the order of the rail; the first nine have Ctrl+1 to Ctrl+9. */
export const menuRooms = [
  'today',
  'designs',
  'stock',
  'orders',
  'bench',
  'shelf',
  'buying',
  'prices',
  'reports',
  'settings',
] as const

export type MenuRoom = (typeof menuRooms)[number]

/** What the window's menu asks of the page. */
export type ShellCommand =
  | Readonly<{ kind: 'undo' }>
  | Readonly<{ kind: 'redo' }>
  | Readonly<{ kind: 'find' }>
  | Readonly<{ kind: 'open-room'; room: MenuRoom }>
