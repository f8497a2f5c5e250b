import { type RefObject, useEffect, useRef, useState } from 'react'

/** Told to a field that lacks something, once the rest of its form is to be kept. */
export const ASKED = 'asked-for'
/** Fields that lack something. */
export const LACKS = '[data-lacks]'

/**
 * What a field lacks, said only once it is asked for: an empty form does not scold before anything was
 * pressed. From then on it is said whenever it is lacking.
 */
export function useMissing<E extends HTMLElement>(
  missing: string | undefined,
): Readonly<{ field: RefObject<E | null>; says: string | undefined }> {
  const field = useRef<E>(null)
  const [isAsked, setAsked] = useState(false)
  useEffect(() => {
    const element = field.current
    const ask = () => setAsked(true)
    element?.addEventListener(ASKED, ask)
    return () => element?.removeEventListener(ASKED, ask)
  }, [])
  return { field, says: isAsked ? missing : undefined }
}
