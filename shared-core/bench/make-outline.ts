import type { DesignBody, Panel, Strand } from '../design/design.ts'
import type { DesignReading } from '../design/reading.ts'
import type { RowStart } from '../route/row-starts.ts'
import type { ReaderPlace } from './reader-place.ts'

/** One part of a piece in hand: its panel with where each row begins, or one copy of a strand. */
export type OutlineStretch =
  | Readonly<{ kind: 'panel'; rowStarts: readonly RowStart[] }>
  | Readonly<{ kind: 'strand'; name: string; copy: number; copies: number }>

/** What of a design a list of work must know to say where the hand is: the pieces of one unit, in order. */
export type MakeOutline = readonly Readonly<{
  name: string
  copies: number
  isMirrored: boolean
  stretches: readonly OutlineStretch[]
}>[]

/**
 * The outline of a unit, from its reading: the pieces and stretches of `writeScript`, without their
 * steps and words, in a fraction of the time.
 */
export function makeOutline(
  body: Pick<DesignBody, 'parts'>,
  reading: Pick<DesignReading, 'parts' | 'warnings'>,
): MakeOutline {
  const readings = new Map(reading.parts.map((part) => [part.partId, part]))
  const lost = new Set(
    reading.warnings.filter(({ code }) => code === 'anchor-missing').map(({ partId }) => partId),
  )
  const strands = body.parts.filter((part) => part.kind === 'strand')
  const hangs = ({ id, anchor }: Strand) =>
    anchor !== undefined && !lost.has(id) && readings.has(anchor.panelId)
  return body.parts.flatMap((part) => {
    const own = readings.get(part.id)
    if (own === undefined || (part.kind === 'strand' && hangs(part))) return []
    const { name, copies } = part
    if (part.kind === 'strand') {
      return [{ name, copies, isMirrored: false, stretches: [copyOf(part, 0, 1)] }]
    }
    const hanging = strands.filter((strand) => hangs(strand) && strand.anchor?.panelId === part.id)
    return [panelPiece(part, own.rowStarts, hanging)]
  })
}

function panelPiece(panel: Panel, rowStarts: readonly RowStart[], hanging: readonly Strand[]) {
  const { name, copies, mirrored } = panel
  const own: OutlineStretch = { kind: 'panel', rowStarts }
  const strands = hanging.flatMap((strand) =>
    Array.from({ length: strand.copies }, (_, copy) => copyOf(strand, copy, strand.copies)),
  )
  return { name, copies, isMirrored: mirrored, stretches: [own, ...strands] }
}

function copyOf({ name }: Strand, copy: number, copies: number): OutlineStretch {
  return { kind: 'strand', name, copy, copies }
}

/**
 * Where a hand is in a make: the piece, and the row as the maker counts it (or two strung together) of
 * how many, or the strand and which of its copies, 1-based.
 */
export type HandAt = Readonly<{
  piece: string
  /** Which of the piece's copies in a unit, 1-based, and how many there are. */
  copy: number
  copies: number
  isMirrored: boolean
  /** Pieces that are made for one unit: where there is one, it need not be named. */
  pieces: number
  at:
    | Readonly<{ kind: 'row'; rows: readonly number[]; of: number }>
    | Readonly<{ kind: 'strand'; name: string; number: number; of: number }>
}>

/**
 * Finds a place in an outline. Before the first row it is at that row; `undefined` where the design has
 * no such place, as after the last step.
 */
export function handAt(
  outline: MakeOutline,
  { copy, part, step }: ReaderPlace,
): HandAt | undefined {
  const pieces = outline.flatMap((piece) =>
    Array.from({ length: piece.copies }, (_, at) => ({ ...piece, copy: at })),
  )
  const piece = pieces.length === 0 ? undefined : pieces[copy % pieces.length]
  const stretch = piece?.stretches[part]
  if (piece === undefined || stretch === undefined) return undefined
  return {
    piece: piece.name,
    copy: piece.copy + 1,
    copies: piece.copies,
    isMirrored: piece.isMirrored && piece.copy % 2 === 1,
    pieces: pieces.length,
    at:
      stretch.kind === 'strand'
        ? { kind: 'strand', name: stretch.name, number: stretch.copy + 1, of: stretch.copies }
        : rowAt(stretch.rowStarts, step),
  }
}

function rowAt(starts: readonly RowStart[], step: number): HandAt['at'] {
  const here = starts.findLast((start) => start.step <= step) ?? starts[0]
  const all = new Set(starts.flatMap(({ rows }) => rows))
  return { kind: 'row', rows: here?.rows ?? [], of: all.size }
}
