// The least an Electron app can be: one sandboxed window with an empty page. What it takes is the
// floor that the studio is measured against.
import { app, BrowserWindow } from 'electron'

void app.whenReady().then(() => {
  const window = new BrowserWindow({ width: 1280, height: 820, webPreferences: { sandbox: true } })
  window.webContents.once('did-finish-load', () => process.stdout.write('interactive\n'))
  void window.loadURL('data:text/html,<!doctype html><title>Blank</title>')
})
app.on('window-all-closed', () => app.quit())
