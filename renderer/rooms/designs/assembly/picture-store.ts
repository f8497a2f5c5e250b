/** Pictures kept, at most: some walls full of them, about 30 MB. */
const MOST = 160

const kept = new Map<string, HTMLCanvasElement>()

/** A picture drawn before under this key. */
export function keptPicture(key: string): HTMLCanvasElement | undefined {
  const found = kept.get(key)
  if (found === undefined) return undefined
  kept.delete(key)
  kept.set(key, found)
  return found
}

/** Keeps a copy of a drawn picture; the one not asked for longest makes room. */
export function keepPicture(key: string, drawn: HTMLCanvasElement): void {
  const copy = document.createElement('canvas')
  copy.width = drawn.width
  copy.height = drawn.height
  copy.getContext('2d')?.drawImage(drawn, 0, 0)
  kept.set(key, copy)
  const [oldest] = kept.keys()
  if (kept.size > MOST && oldest !== undefined) kept.delete(oldest)
}
