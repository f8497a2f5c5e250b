import { powerSaveBlocker, type WebContents } from 'electron'

const held = new Map<WebContents, number>()
const watched = new WeakSet<WebContents>()

/**
 * Keeps the screen on for a page, or lets it go dark again. A page that is loaded anew, crashes or is
 * closed holds it no longer.
 */
export function keepAwake(page: WebContents, awake: boolean): void {
  if (!awake) release(page)
  if (!awake || held.has(page)) return
  held.set(page, powerSaveBlocker.start('prevent-display-sleep'))
  if (watched.has(page)) return
  watched.add(page)
  const letGo = () => release(page)
  page.on('did-start-loading', letGo)
  page.on('render-process-gone', letGo)
  page.once('destroyed', letGo)
}

function release(page: WebContents): void {
  const blocker = held.get(page)
  if (blocker === undefined) return
  held.delete(page)
  powerSaveBlocker.stop(blocker)
}
