// Words people use in stock lists, English and German, and what they mean here. A data table.
import type { BeadFamily, BeadFinish } from '../../../shared-core/beads/bead-form.ts'

/** What a column of a stock list can hold. */
export type StockColumn =
  | 'ignore'
  | 'code'
  | 'name'
  | 'kind'
  | 'size'
  | 'colour'
  | 'finish'
  | 'grams'
  | 'pieces'
  | 'pack-price'
  | 'pack'
  | 'supplier'
  | 'dye-lot'
  | 'bought-on'
  | 'drawer'
  | 'note'

/** What a word for a kind says: the kind, and for beads the family and, where told, the make. */
export type KindWord =
  | Readonly<{ kind: 'bead'; family: BeadFamily; make?: 'japanese' | 'czech' }>
  | Readonly<{ kind: 'thread' | 'finding' | 'packaging' }>

/** A word as it is compared: small letters and digits only, umlauts and accents as plain letters. */
export function plainWord(text: string): string {
  return text
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .normalize('NFD')
    .replace(/[^a-z0-9]/g, '')
}

/** Headings by column, as plain words. The first column that knows a heading takes it. */
export const HEADINGS: Readonly<Record<Exclude<StockColumn, 'ignore'>, readonly string[]>> = {
  code: [
    'artikelnr',
    'artikelnummer',
    'artnr',
    'artikel',
    'nr',
    'nummer',
    'code',
    'sku',
    'item',
    'itemno',
    'itemnumber',
    'articleno',
    'number',
    'no',
    'ref',
    'bestellnr',
    'id',
  ],
  name: [
    'bezeichnung',
    'name',
    'beschreibung',
    'description',
    'material',
    'title',
    'produkt',
    'product',
    'artikelbezeichnung',
    'itemname',
  ],
  kind: ['art', 'kind', 'type', 'typ', 'kategorie', 'category', 'warengruppe', 'gruppe', 'group'],
  size: ['grosse', 'groesse', 'size', 'gr', 'durchmesser', 'diameter', 'starke', 'staerke'],
  colour: ['farbe', 'colour', 'color', 'farbcode', 'hex', 'colourhex', 'colorhex', 'rgb'],
  finish: ['finish', 'oberflache', 'oberflaeche', 'veredelung', 'surface', 'coating'],
  grams: [
    'bestandg',
    'bestandgramm',
    'bestand',
    'gramm',
    'grams',
    'gram',
    'g',
    'stock',
    'stockg',
    'onhand',
    'onhandg',
    'weight',
    'weightg',
    'gewicht',
    'gewichtg',
    'menge',
    'quantity',
    'qty',
    'qtyg',
    'amount',
    'lagerbestand',
  ],
  pieces: [
    'stuck',
    'stueck',
    'stuckzahl',
    'stueckzahl',
    'anzahl',
    'pieces',
    'pcs',
    'count',
    'stk',
    'bestandstuck',
    'units',
  ],
  'pack-price': [
    'preisjepackung',
    'preispropackung',
    'preis',
    'price',
    'packprice',
    'priceperpack',
    'pricepack',
    'einkaufspreis',
    'ek',
    'ekpreis',
    'cost',
    'kosten',
    'unitprice',
  ],
  pack: [
    'packung',
    'pack',
    'packsize',
    'packungsgrosse',
    'packungsgroesse',
    'packungsinhalt',
    'gebinde',
    'inhalt',
    'vpe',
    'packquantity',
    'package',
  ],
  supplier: [
    'lieferant',
    'supplier',
    'vendor',
    'handler',
    'haendler',
    'shop',
    'bezugsquelle',
    'source',
    'from',
  ],
  'dye-lot': [
    'farbcharge',
    'charge',
    'chargennr',
    'chargennummer',
    'dyelot',
    'lot',
    'lotno',
    'lotnumber',
    'batch',
    'partie',
    'farbpartie',
  ],
  'bought-on': [
    'gekauftam',
    'kaufdatum',
    'datum',
    'boughton',
    'bought',
    'date',
    'purchased',
    'purchasedate',
    'purchasedon',
    'einkaufsdatum',
    'eingang',
    'received',
    'gekauft',
  ],
  drawer: [
    'fach',
    'lagerort',
    'ort',
    'lade',
    'schublade',
    'drawer',
    'location',
    'bin',
    'shelf',
    'box',
    'platz',
    'regal',
  ],
  note: [
    'notiz',
    'notizen',
    'note',
    'notes',
    'bemerkung',
    'bemerkungen',
    'kommentar',
    'comment',
    'comments',
    'remark',
    'remarks',
    'hinweis',
  ],
}

const cylinder: KindWord = { kind: 'bead', family: 'cylinder' }
const rocaille: KindWord = { kind: 'bead', family: 'rocaille' }
const finding: KindWord = { kind: 'finding' }
const thread: KindWord = { kind: 'thread' }
const packaging: KindWord = { kind: 'packaging' }

/** Kinds by a word that begins or stands in the cell; longer words are tried first. */
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

/** Finishes by the words of the trade. */
export const FINISH_WORDS: Readonly<Record<string, BeadFinish>> = {
  opak: 'opaque',
  opaque: 'opaque',
  matt: 'matte',
  matte: 'matte',
  mattiert: 'matte',
  glanzend: 'gloss',
  glaenzend: 'gloss',
  glanz: 'gloss',
  gloss: 'gloss',
  glossy: 'gloss',
  luster: 'gloss',
  lustre: 'gloss',
  transparent: 'transparent',
  transluzent: 'transparent',
  klar: 'transparent',
  clear: 'transparent',
  silbereinzug: 'lined',
  farbeinzug: 'lined',
  einzug: 'lined',
  lined: 'lined',
  silverlined: 'lined',
  colourlined: 'lined',
  colorlined: 'lined',
  metallic: 'metallic',
  metallisch: 'metallic',
  metallisiert: 'metallic',
  galvanisiert: 'metallic',
  galvanised: 'metallic',
  galvanized: 'metallic',
  iris: 'iridescent',
  irisierend: 'iridescent',
  iridescent: 'iridescent',
  rainbow: 'iridescent',
  ab: 'iridescent',
}
