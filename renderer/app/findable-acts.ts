import { go, type Place } from './place.ts'
import { redo, undo } from './step-back.ts'
import { chooseTheme } from './theme.ts'
import type { Finding } from './use-findings.ts'

/** Acts that begin at a place of a room: the room opens its sheet for it there. */
const places: readonly (readonly [label: string, detail: string, place: Place])[] = [
  ['New design', 'blank, from a chart file', { room: 'designs', id: 'new' }],
  ['Import a chart', 'from a grid file', { room: 'designs', id: 'import' }],
  ['New material', 'bead, thread, finding, packaging', { room: 'stock', id: 'new' }],
  ['Import a stock list', 'from a spreadsheet', { room: 'stock', id: 'import' }],
  ['New order', 'what is promised, and when', { room: 'orders', id: 'new' }],
  ['Workshop settings', 'name, labour rate, tags', { room: 'settings', id: 'workshop' }],
  ['Channels and fees', 'market, web shop, gallery', { room: 'settings', id: 'channels' }],
  ['Places', 'where pieces stand', { room: 'settings', id: 'places' }],
  ['Suppliers', 'who sells what, how long it takes', { room: 'settings', id: 'suppliers' }],
  ['Appearance', 'light, dark', { room: 'settings', id: 'appearance' }],
]

/** Everything that can be begun from the finder. */
export function findableActs(onKeys: () => void): readonly Finding[] {
  return [
    ...places.map(([label, detail, place]) => act(label, detail, () => go(place))),
    act('Undo the last step', 'Ctrl Z', () => void undo()),
    act('Redo', 'Ctrl Shift Z', () => void redo()),
    act('Light paper', 'theme', () => chooseTheme('light')),
    act('Dark, by lamplight', 'theme', () => chooseTheme('dark')),
    act('Theme of the system', 'theme', () => chooseTheme('system')),
    act('Keys', 'every key of the studio', onKeys),
  ]
}

function act(label: string, detail: string, choose: () => void): Finding {
  return { key: `act ${label}`, kind: 'Act', label, detail, choose }
}
