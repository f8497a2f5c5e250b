/** Pixels of the screen to one of the page, as it is now. */
export function screenRatio(): number {
  return globalThis.devicePixelRatio || 1
}
