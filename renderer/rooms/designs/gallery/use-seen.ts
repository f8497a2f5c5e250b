import { type RefObject, useEffect, useState } from 'react'

/** Begins a little before a card comes into view. */
const AHEAD = '300px'

/** Whether a place has been in view yet. */
export function useSeen(place: RefObject<HTMLElement | null>): boolean {
  const [isSeen, setSeen] = useState(false)
  useEffect(() => {
    if (isSeen || place.current === null) return
    const watch = new IntersectionObserver(
      (entries) => {
        if (entries.some(({ isIntersecting }) => isIntersecting)) setSeen(true)
      },
      { rootMargin: AHEAD },
    )
    watch.observe(place.current)
    return () => watch.disconnect()
  }, [isSeen, place])
  return isSeen
}
