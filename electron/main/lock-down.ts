import { app, type Session, session, type WebContents } from 'electron'

import { appOrigin } from './app-scheme.ts'

const webAddresses = ['http://*/*', 'https://*/*', 'ws://*/*', 'wss://*/*', 'file://*/*']

/** Closes what a page could use to leave the studio. Call before the first window is made. */
export function lockDown(): void {
  app.on('web-contents-created', (_event, contents) => lockDownContents(contents))
  lockDownSession(session.defaultSession)
}

function lockDownContents(contents: WebContents): void {
  contents.on('will-navigate', (event) => event.preventDefault())
  contents.on('will-redirect', (event) => event.preventDefault())
  contents.on('will-frame-navigate', (event) => {
    if (!event.url.startsWith(`${appOrigin}/`)) event.preventDefault()
  })
  contents.on('will-attach-webview', (event) => event.preventDefault())
  contents.setWindowOpenHandler(() => ({ action: 'deny' }))
}

function lockDownSession(ours: Session): void {
  ours.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  ours.setPermissionCheckHandler(() => false)
  ours.setDevicePermissionHandler(() => false)
  // Dictionaries would be fetched from the web.
  ours.setSpellCheckerEnabled(false)
  ours.webRequest.onBeforeRequest({ urls: webAddresses }, (_details, answer) =>
    answer({ cancel: true }),
  )
}
