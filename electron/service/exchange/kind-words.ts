import type { BeadFamily } from '../../../shared-core/beads/bead-form.ts'

/** What a word for a kind says: the kind, and for beads the family and, where told, the make. */
export type KindWord =
  | Readonly<{ kind: 'bead'; family: BeadFamily; make?: 'japanese' | 'czech' }>
  | Readonly<{ kind: 'thread' | 'finding' | 'packaging' }>

const cylinder: KindWord = { kind: 'bead', family: 'cylinder' }
const rocaille: KindWord = { kind: 'bead', family: 'rocaille' }
const finding: KindWord = { kind: 'finding' }
const thread: KindWord = { kind: 'thread' }
const packaging: KindWord = { kind: 'packaging' }

/** Kinds by a word, English or German, that begins or stands in the cell; longer words are tried first. */
export const KIND_WORDS: Readonly<Record<string, KindWord>> = {
  zylinder: cylinder,
  zylinderperle: cylinder,
  cylinder: cylinder,
  cylinderbead: cylinder,
  rocaille: rocaille,
  rocailles: rocaille,
  rocaillesrund: rocaille,
  rocaillerund: rocaille,
  rocaillesjapan: { ...rocaille, make: 'japanese' },
  rocaillejapanisch: { ...rocaille, make: 'japanese' },
  japaneserocaille: { ...rocaille, make: 'japanese' },
  rocaillestschechisch: { ...rocaille, make: 'czech' },
  rocailletschechisch: { ...rocaille, make: 'czech' },
  czechrocaille: { ...rocaille, make: 'czech' },
  seedbead: rocaille,
  roundseedbead: rocaille,
  saatperle: rocaille,
  stift: { kind: 'bead', family: 'bugle' },
  stiftperle: { kind: 'bead', family: 'bugle' },
  bugle: { kind: 'bead', family: 'bugle' },
  tropfen: { kind: 'bead', family: 'drop' },
  drop: { kind: 'bead', family: 'drop' },
  wurfel: { kind: 'bead', family: 'cube' },
  cube: { kind: 'bead', family: 'cube' },
  zweiloch: { kind: 'bead', family: 'two-hole' },
  twohole: { kind: 'bead', family: 'two-hole' },
  schliffperle: { kind: 'bead', family: 'faceted' },
  facettenperle: { kind: 'bead', family: 'faceted' },
  faceted: { kind: 'bead', family: 'faceted' },
  faden: thread,
  garn: thread,
  zwirn: thread,
  thread: thread,
  cord: thread,
  zubehor: finding,
  finding: finding,
  findings: finding,
  ohrhaken: finding,
  earwire: finding,
  earwires: finding,
  verschluss: finding,
  clasp: finding,
  biegering: finding,
  jumpring: finding,
  ohrstecker: finding,
  earstud: finding,
  metallteile: finding,
  verpackung: packaging,
  packaging: packaging,
  karte: packaging,
  karten: packaging,
  card: packaging,
  schachtel: packaging,
  box: packaging,
  beutel: packaging,
  bag: packaging,
}
