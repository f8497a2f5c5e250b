import { useSyncExternalStore } from 'react'
import { type RoomName, rooms } from './rooms.ts'

/** Where the maker is: a room, what is open in it, and a view of that. Written in the address after `#`. */
export type Place = Readonly<{ room: RoomName; id?: string | undefined; sub?: string | undefined }>

/** The place an address names; Today when it names none. */
export function parsePlace(hash: string): Place {
  const [room = '', id, sub] = hash
    .replace(/^#\/?/, '')
    .split('/')
    .map((part) => decode(part))
  const found = rooms.find(({ name }) => name === room)
  if (found === undefined) return { room: 'today' }
  return { room: found.name, id: id || undefined, sub: sub || undefined }
}

/** The address of a place, for links: `#/stock/mat_3f9k2m7q`. */
export function hrefTo({ room, id, sub }: Place): string {
  const parts = [room, id, id === undefined ? undefined : sub]
  return `#/${parts
    .filter((part) => part !== undefined)
    .map(encodeURIComponent)
    .join('/')}`
}

/** Goes to a place; `replace` leaves no step to come back to. */
export function go(place: Place, { replace = false }: Readonly<{ replace?: boolean }> = {}): void {
  if (replace) {
    history.replaceState(null, '', hrefTo(place))
    dispatchEvent(new HashChangeEvent('hashchange'))
  } else {
    location.hash = hrefTo(place)
  }
}

function listen(onChange: () => void): () => void {
  addEventListener('hashchange', onChange)
  return () => removeEventListener('hashchange', onChange)
}

let lastHash = '\u0000'
let lastPlace: Place = { room: 'today' }

function read(): Place {
  if (location.hash !== lastHash) {
    lastHash = location.hash
    lastPlace = parsePlace(lastHash)
  }
  return lastPlace
}

/** The place the maker is at, kept up to date. */
export function usePlace(): Place {
  return useSyncExternalStore(listen, read)
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}
