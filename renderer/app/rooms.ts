import { type ComponentType, createElement } from 'react'
import { type Fetched, fetched } from './fetched.tsx'

/** The ten rooms in the order of the rail, which is also the order of their keys. */
export const rooms = [
  { name: 'today', title: 'Today', purpose: 'what needs you now' },
  { name: 'designs', title: 'Designs', purpose: 'charts, parts, colourways and what they take' },
  { name: 'stock', title: 'Stock', purpose: 'beads, thread and findings, by lot' },
  { name: 'orders', title: 'Orders', purpose: 'what is promised, and whether stock covers it' },
  { name: 'bench', title: 'Bench', purpose: 'what is being made, row by row' },
  { name: 'shelf', title: 'Shelf', purpose: 'finished pieces, where each is and what it earned' },
  { name: 'buying', title: 'Buying', purpose: 'what runs out when, and what to buy' },
  { name: 'prices', title: 'Prices', purpose: 'what a piece costs and what to ask for it' },
  { name: 'reports', title: 'Reports', purpose: 'money and time over months and years' },
  { name: 'settings', title: 'Settings', purpose: 'the workshop and its ways' },
] as const

export type RoomName = (typeof rooms)[number]['name']

// A room is a folder with `<name>-room.tsx` that exports `<Name>Room`; it is loaded when first entered.
const files = import.meta.glob<Readonly<Record<string, ComponentType>>>('../rooms/*/*-room.tsx')

/** The component of a room, or `undefined` while it is not built. */
export function findRoom(name: RoomName): Fetched<object> | undefined {
  return built.get(name)
}

const built = new Map(
  rooms.flatMap(({ name, title }) => {
    const load = files[`../rooms/${name}/${name}-room.tsx`]
    if (load === undefined) return []
    const room = fetched(
      async () => {
        const component = (await load())[`${title}Room`]
        if (component === undefined) throw new Error(`room ${name}: expected export ${title}Room`)
        return component
      },
      createElement('div', { className: 'room', 'aria-busy': true }),
    )
    return [[name, room] as const]
  }),
)
