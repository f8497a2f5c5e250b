import { go, type Place } from './place.ts'
import { redo, undo } from './step-back.ts'
import { chooseTheme } from './theme.ts'
import type { Finding } from './use-findings.ts'

/** Acts that begin at a place of a room: the room opens its sheet for it there. */
const places: readonly (readonly [label: string, detail: string, place: Place])[] = [
  ['New design', 'every way to begin', { room: 'designs', id: 'new' }],
  ['Bring in a chart', 'import a grid file, CSV or PNG', { room: 'designs', id: 'bring-in' }],
  ['New blank chart', 'a stitch and a size', { room: 'designs', id: 'new', sub: 'blank' }],
  ['New from an outline', 'diamond, leaf, fringe', { room: 'designs', id: 'new', sub: 'outline' }],
  ['New from a picture', 'photograph in beads', { room: 'designs', id: 'new', sub: 'picture' }],
  ['New from a word chart', 'rows in words', { room: 'designs', id: 'new', sub: 'words' }],
  ['Bring in a stock list', 'import a spreadsheet', { room: 'stock', id: 'bring-in' }],
  ['New order', 'what is promised, and when', { room: 'orders', id: 'new' }],
  ['Start a piece', 'at the bench, row by row', { room: 'bench', id: 'start' }],
  ['Log a make', 'finished pieces, beads used', { room: 'bench' }],
  ['What the bench has taught', 'pace, culls, thread', { room: 'bench', id: 'pace' }],
  ['Workshop settings', 'name, labour rate, overhead', { room: 'settings', id: 'workshop' }],
  ['Channels and fees', 'market, web shop, gallery', { room: 'settings', id: 'channels' }],
  ['Places', 'where pieces stand', { room: 'settings', id: 'places' }],
  ['Suppliers', 'who sells what, how long it takes', { room: 'settings', id: 'suppliers' }],
  ['Beads and threads', 'bead forms, sizes, your own', { room: 'settings', id: 'beads' }],
  ['What tags say', 'maker, care, caution', { room: 'settings', id: 'tags' }],
  ['Appearance', 'light, dark', { room: 'settings', id: 'appearance' }],
  ['About', 'version, where the data is, cautions', { room: 'settings', id: 'about' }],
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
