import { join } from 'node:path'

import { app, Menu } from 'electron'

import { declareAppScheme } from './app-scheme.ts'
import { runStudio } from './studio.ts'
import { chooseUserData } from './user-data.ts'

chooseUserData()
// The lock belongs to the user's folder, so the folder has to be chosen before it.
if (app.requestSingleInstanceLock()) {
  declareAppScheme()
  // The page's own files are all that is ever fetched: no process of its own for that.
  app.commandLine.appendSwitch('enable-features', 'NetworkServiceInProcess2')
  // Without this Electron builds a menu of its own first, only to throw it away.
  Menu.setApplicationMenu(null)
  // Together with --no-sandbox, which root in a container needs, this would end every child.
  if (!app.commandLine.hasSwitch('no-sandbox')) app.enableSandbox()
  // Never awaited here: the app becomes ready only after this module has been evaluated.
  void app.whenReady().then(() => runStudio(join(import.meta.dirname, '..')))
} else {
  app.quit()
}
