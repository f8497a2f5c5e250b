import { screenRatio } from './screen-ratio.ts'

type Watched = Readonly<{
  /** The size of the place, pixels of the screen. */
  onSize: (width: number, height: number) => void
  onTheme: () => void
}>

/** Tells when the place of a picture, the fineness of the screen or the colours of the page change. */
export function watchPlace(place: HTMLElement, { onSize, onTheme }: Watched): () => void {
  const tell = () => {
    const ratio = screenRatio()
    onSize(Math.round(place.clientWidth * ratio), Math.round(place.clientHeight * ratio))
  }
  const sizes = new ResizeObserver(tell)
  sizes.observe(place)
  const stopWatchingRatio = watchRatio(tell)
  const dark = matchMedia('(prefers-color-scheme: dark)')
  dark.addEventListener('change', onTheme)
  const theme = new MutationObserver(onTheme)
  theme.observe(document.documentElement, { attributeFilter: ['data-theme'] })
  return () => {
    sizes.disconnect()
    stopWatchingRatio()
    theme.disconnect()
    dark.removeEventListener('change', onTheme)
  }
}

/** A window moved to a finer screen keeps its size, so nothing else would tell. */
function watchRatio(onChange: () => void): () => void {
  let query: MediaQueryList | undefined
  const renew = () => {
    query?.removeEventListener('change', renew)
    if (query !== undefined) onChange()
    query = matchMedia(`(resolution: ${screenRatio()}dppx)`)
    query.addEventListener('change', renew)
  }
  renew()
  return () => query?.removeEventListener('change', renew)
}
