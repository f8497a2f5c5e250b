import { type ComponentType, type ReactNode, useEffect, useState } from 'react'

/** A component in a file of its own; `ahead` fetches the file before anyone shows it. */
export type Fetched<P> = ComponentType<P> & Readonly<{ ahead: () => Promise<void> }>

/**
 * A component whose file is fetched when it is first shown, and shown the moment it is there.
 *
 * React's own way holds what stands in for it for 300 ms, also where the file came at once, so every
 * room would open that much later than it could. A file that cannot be fetched is thrown to the
 * boundary, and asked for again the next time.
 */
export function fetched<P extends object>(
  load: () => Promise<ComponentType<P>>,
  waiting: ReactNode = null,
): Fetched<P> {
  let Found: ComponentType<P> | undefined
  let coming: Promise<void> | undefined

  function ahead(): Promise<void> {
    coming ??= load().then(
      (component) => {
        Found = component
      },
      (cause) => {
        coming = undefined
        throw cause
      },
    )
    return coming
  }

  // biome-ignore lint/correctness/noComponentHookFactories: made once for a file, never while rendering
  function Shown(props: P) {
    const [state, setState] = useState<Readonly<{ fault?: unknown }>>({})
    useEffect(() => {
      if (Found === undefined) {
        void ahead().then(
          () => setState({}),
          (fault) => setState({ fault }),
        )
      }
    }, [])
    if ('fault' in state) throw state.fault
    return Found === undefined ? waiting : <Found {...props} />
  }

  return Object.assign(Shown, { ahead })
}
