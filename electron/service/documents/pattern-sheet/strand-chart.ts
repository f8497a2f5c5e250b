import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import type { Strand } from '../../../../shared-core/design/design.ts'
import { readStrandBeads } from '../../../../shared-core/stitches/strand/strand-beads.ts'
import type { Mark } from '../draw-list.ts'
import { slotStamps } from './chart-marks.ts'
import { layLegend } from './chart-pages.ts'
import type { SheetData } from './sheet-data.ts'
import { LINE } from './sheet-frame.ts'
import { EDGE, SOFT, TIDE, text } from './sheet-style.ts'
import type { SheetWriter } from './sheet-writer.ts'
import type { SlotLook } from './slot-look.ts'

/** A bead is drawn at most so wide, and the chart left to words where one would be smaller than the least, mm. */
const MOST_WIDE_MM = 4.6
const LEAST_MM = 1.7
/** From one strand to the next, mm. */
const STEP_MM = 13.5
const NAME_PT = 7
const HINT =
  'A strand hangs down from the work: its first bead stands at the top, its number of beads below.'

type LookOf = (slot: number) => SlotLook
type Hung = Readonly<{ strand: Strand; looks: readonly SlotLook[]; lengthMm: number }>

/** Writes the strands of a design side by side as they hang, bead by bead with their symbols. */
export function writeStrandChart(writer: SheetWriter, data: SheetData, lookOf: LookOf): void {
  const strands = data.body.parts.flatMap((part) => hungOf(part, lookOf))
  // Of one colour each, their number of beads in the word chart says all of it.
  if (!strands.some(isPatterned)) return
  const { frame } = writer
  const used = new Map(strands.flatMap(({ looks }) => looks.map((look) => [look.index, look])))
  const legend = layLegend(
    writer,
    [...used.values()].toSorted((a, b) => a.index - b.index),
    HINT,
  )
  const top = frame.top + 4.5 * LINE
  const room = frame.bottom - legend.lines * LINE - 3 - LINE - top
  const scale = scaleFor(strands, room)
  if (scale === undefined) return
  const perPage = Math.floor((frame.right - frame.left) / STEP_MM)
  for (let from = 0; from < strands.length; from += perPage) {
    const shown = strands.slice(from, from + perPage)
    const last = from + shown.length
    writer.newPage()
    writer.put(
      text(frame.left, frame.top + LINE, 'Chart: strands', { face: 'title', sizePt: 16 }),
      text(frame.right, frame.top + LINE, `Strands ${from + 1} to ${last}`, {
        colour: SOFT,
        sizePt: 9,
        align: 'right',
      }),
    )
    const left = (frame.left + frame.right - shown.length * STEP_MM) / 2 + STEP_MM / 2
    shown.forEach((hung, at) => {
      writer.put(...column(writer, hung, { x: left + at * STEP_MM, top, scale }))
    })
    writer.put(...legend.marks)
  }
}

function hungOf(part: SheetData['body']['parts'][number], lookOf: LookOf): readonly Hung[] {
  if (part.kind !== 'strand') return []
  const looks = Array.from(readStrandBeads(part.beads) ?? [], lookOf)
  if (looks.length === 0) return []
  const lengthMm = looks.reduce((sum, look) => sum + sizeOf(look).heightMm, 0)
  return [{ strand: part, looks, lengthMm }]
}

function isPatterned({ looks }: Hung): boolean {
  return new Set(looks.map(({ index }) => index)).size > 1
}

/** Pages' mm a mm of life: the longest strand fits, and no bead is too small to tell by its symbol. */
function scaleFor(strands: readonly Hung[], roomMm: number): number | undefined {
  const sizes = strands.flatMap(({ looks }) => looks.map(sizeOf))
  const widest = Math.max(...sizes.map(({ widthMm }) => widthMm))
  const least = Math.min(...sizes.map(({ widthMm, heightMm }) => Math.min(widthMm, heightMm)))
  const longest = Math.max(...strands.map(({ lengthMm }) => lengthMm))
  const scale = Math.min(MOST_WIDE_MM / widest, roomMm / longest)
  return least * scale < LEAST_MM ? undefined : scale
}

function sizeOf({ form }: Readonly<{ form: BeadForm | undefined }>) {
  return { widthMm: form?.diameterMm.value ?? 1.6, heightMm: form?.lengthMm.value ?? 1.3 }
}

type Place = Readonly<{ x: number; top: number; scale: number }>

function column(
  writer: SheetWriter,
  { strand, looks }: Hung,
  { x, top, scale }: Place,
): readonly Mark[] {
  let y = top
  const beads = looks.flatMap((look) => {
    const { widthMm, heightMm } = sizeOf(look)
    const box = { widthMm: widthMm * scale, heightMm: heightMm * scale, turnRad: 0 }
    const middle = y + box.heightMm / 2
    y += box.heightMm
    return slotStamps(look, { places: [[x, middle]], ...box })
  })
  const name = writer.wrapped(strand.name, 'text', NAME_PT, STEP_MM - 1.2, 2)
  const times = strand.copies > 1 ? `, ${strand.copies} times` : ''
  const style = { sizePt: NAME_PT, align: 'centre' } as const
  return [
    ...name.map((line, at) =>
      text(x, top - 2.4 - (name.length - 1 - at) * 3, line, { ...style, colour: TIDE }),
    ),
    {
      kind: 'line',
      fromMm: [x - STEP_MM / 2 + 1, top - 1],
      toMm: [x + STEP_MM / 2 - 1, top - 1],
      widthMm: 0.2,
      colour: EDGE,
    },
    ...beads,
    text(x, y + 3.4, `${looks.length}${times}`, { ...style, colour: SOFT }),
  ]
}
