/**
 * Puts a text on the clipboard by the page's own copy command.
 *
 * The clipboard's newer interface needs a permission, and the window grants none.
 */
export function copyText(text: string): boolean {
  const put = (event: ClipboardEvent) => {
    event.clipboardData?.setData('text/plain', text)
    event.preventDefault()
  }
  document.addEventListener('copy', put, { once: true })
  const isDone = document.execCommand('copy')
  document.removeEventListener('copy', put)
  return isDone
}
