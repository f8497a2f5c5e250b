import { join } from 'node:path'

import { app } from 'electron'

/** Moves everything the studio keeps to another folder when one is named on the command line. */
export function chooseUserData(): void {
  const named = app.commandLine.getSwitchValue('user-data-dir')
  if (named !== '') app.setPath('userData', named)
}

/** The workshop's database: named with `--db=FILE`, or the one in the user's folder. */
export function dataFile(): string {
  const named = app.commandLine.getSwitchValue('db')
  return named === '' ? join(app.getPath('userData'), 'workshop.tallystrand') : named
}
