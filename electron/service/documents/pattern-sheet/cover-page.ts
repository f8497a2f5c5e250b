import { placedOutline } from '../../../../shared-core/colour/path-step.ts'
import { findingOutline, WIRE_MM } from '../../../../shared-core/design/assembly/placed-finding.ts'
import { leanOf } from '../../../../shared-core/stitches/strand/loop-arc.ts'
import { durationS } from '../../../../shared-core/units/duration.ts'
import { formatDuration } from '../../../../shared-core/units/format-duration.ts'
import { formatCount } from '../../../../shared-core/units/format-number.ts'
import type { Mark } from '../draw-list.ts'
import { beadMarks } from './bead-marks.ts'
import type { PiecePicture } from './piece-picture.ts'
import type { SheetData } from './sheet-data.ts'
import { LINE } from './sheet-frame.ts'
import { EDGE, INK, SAND, SOFT, TIDE, text } from './sheet-style.ts'
import { AUDIENCE_NAME, formNames, listed, sizeWords, stitchWords } from './sheet-words.ts'
import type { SheetWriter } from './sheet-writer.ts'

/** Larger than this a bead is a boulder. */
const MOST_SCALE = 7
const FACTS_LINES = 10

/** Writes the cover: title, the piece in true proportion, and what a reader asks first. */
export function writeCover(writer: SheetWriter, data: SheetData, picture: PiecePicture): void {
  const { frame } = writer
  writer.newPage()
  writer.put(
    text(frame.left, frame.headY, writer.wrapped(data.maker, 'text', 9, 110, 1)[0] ?? '', {
      sizePt: 9,
      colour: SOFT,
    }),
    text(frame.right, frame.headY, AUDIENCE_NAME[data.audience], {
      sizePt: 9,
      face: 'text-strong',
      colour: TIDE,
      align: 'right',
    }),
  )
  const titleLines = writer.wrapped(data.name, 'title', 28, writer.width, 3)
  let y = frame.top + 2 * LINE
  for (const line of titleLines) {
    writer.put(text(frame.left, y, line, { face: 'title', sizePt: 28 }))
    y += 2.5 * LINE
  }
  y -= 0.5 * LINE
  const under = `${stitchWords(data.body)}. Colourway: ${data.colourway}.`
  for (const line of writer.wrapped(under, 'text', 12, writer.width, 2)) {
    writer.put(text(frame.left, y, line, { sizePt: 12, colour: SOFT }))
    y += LINE * 1.25
  }
  const box = {
    left: frame.left,
    top: y,
    right: frame.right,
    bottom: frame.bottom - FACTS_LINES * LINE,
  }
  writer.put(...pictureMarks(picture, box))
  writer.put(...facts(writer, data, box.bottom + 2 * LINE))
}

type Box = Readonly<{ left: number; top: number; right: number; bottom: number }>

function pictureMarks(picture: PiecePicture, box: Box): readonly Mark[] {
  const [width, height] = [box.right - box.left, box.bottom - box.top]
  const ground: Mark = {
    kind: 'box',
    xMm: box.left,
    yMm: box.top,
    widthMm: width,
    heightMm: height,
    radiusMm: 2.5,
    fill: SAND,
    stroke: null,
  }
  if (picture.beads.length === 0) return [ground]
  const scale = Math.min(
    (width - 20) / picture.widthMm,
    (height - 26) / picture.heightMm,
    MOST_SCALE,
  )
  const left = box.left + (width - picture.widthMm * scale) / 2
  const top = box.top + (height - 6 - picture.heightMm * scale) / 2
  const beads = picture.beads.map((bead) => ({
    ...bead,
    xMm: left + bead.xMm * scale,
    yMm: top + bead.yMm * scale,
    widthMm: bead.widthMm * scale,
    heightMm: bead.heightMm * scale,
  }))
  return [
    ground,
    ...beadMarks(beads),
    ...findingMarks(picture, { scale, left, top }),
    ...ruler(box, scale),
  ]
}

/** Wire and metal in two greys, the darker as the edge: seen on white paper too. */
const [METAL_EDGE, METAL] = ['#6f797e', '#c3c9cb']

function findingMarks(
  { findings }: PiecePicture,
  { scale, left, top }: Readonly<{ scale: number; left: number; top: number }>,
): readonly Mark[] {
  return findings.flatMap((finding): readonly Mark[] => {
    const { outline, isSolid } = findingOutline(finding)
    const { at, way } = finding
    const stamp = {
      kind: 'stamps',
      outline: placedOutline(outline, { scale }),
      placesMm: [[left + at.x * scale, top + at.y * scale] as const],
      turnRad: leanOf(way),
      fill: null,
    } as const
    const edge = { colour: METAL_EDGE, widthMm: (isSolid ? 0.3 : WIRE_MM) * scale }
    if (isSolid) return [{ ...stamp, fill: METAL, stroke: edge }]
    const inner = { colour: METAL, widthMm: (WIRE_MM - 0.35) * scale }
    return [
      { ...stamp, stroke: edge },
      { ...stamp, stroke: inner },
    ]
  })
}

/** A centimetre in the picture's scale, so that the eye knows how small the piece is. */
function ruler({ right, bottom }: Box, scale: number): readonly Mark[] {
  const cm = 10 * scale
  const [x, y] = [right - 6, bottom - 6]
  const bar = (from: readonly [number, number], to: readonly [number, number]): Mark => ({
    kind: 'line',
    fromMm: from,
    toMm: to,
    widthMm: 0.25,
    colour: INK,
  })
  const style = { sizePt: 8, colour: SOFT, align: 'right' } as const
  if (cm > 80) return [text(x, y, `Drawn ${scale.toFixed(1)} times its size`, style)]
  return [
    bar([x - cm, y], [x, y]),
    bar([x - cm, y - 1.2], [x - cm, y + 1.2]),
    bar([x, y - 1.2], [x, y + 1.2]),
    text(x, y - 2.2, '1 cm', style),
  ]
}

function facts(writer: SheetWriter, data: SheetData, topY: number): readonly Mark[] {
  const { frame } = writer
  const rows = factRows(data)
  const columns = 4
  const gap = 6
  const wide = (frame.right - frame.left - gap * (columns - 1)) / columns
  const marks: Mark[] = []
  rows.forEach(({ label, lines }, i) => {
    const x = frame.left + (i % columns) * (wide + gap)
    const y = topY + Math.floor(i / columns) * 5 * LINE
    marks.push({
      kind: 'line',
      fromMm: [x, y - LINE + 0.6],
      toMm: [x + wide, y - LINE + 0.6],
      widthMm: 0.25,
      colour: EDGE,
    })
    marks.push(text(x, y, label, { sizePt: 8.5, colour: TIDE, face: 'text-strong' }))
    const set = lines.flatMap((line) => writer.wrapped(line, 'text', 9.5, wide, 3)).slice(0, 3)
    set.forEach((line, at) => {
      marks.push(text(x, y + (at + 1) * LINE, line))
    })
  })
  return marks
}

type Fact = Readonly<{ label: string; lines: readonly string[] }>

function factRows(data: SheetData): readonly Fact[] {
  const { reading, body } = data
  const size = sizeWords(data)
  const colours = reading.counts.filter(({ count }) => count > 0).length
  const panels = body.parts.flatMap((part) => (part.kind === 'panel' ? [part] : []))
  const charts = panels.map(({ chart }) => {
    const widest = chart.rows.reduce((most, { cells }) => Math.max(most, placesIn(cells)), 0)
    return `${formatCount(widest)} × ${formatCount(chart.rows.length)}`
  })
  return [
    { label: 'Finished size', lines: [size.mm, size.inches] },
    {
      label: 'Beads',
      lines: [formatCount(reading.beads), `in ${colours} ${colours === 1 ? 'colour' : 'colours'}`],
    },
    { label: 'Bead size', lines: [listed(formNames(data))] },
    { label: 'Columns × rows', lines: [listed(charts) || 'strands only'] },
    { label: 'Makes', lines: [`1 ${body.unitName}`] },
    {
      label: 'Time at the bench',
      lines: [`about ${formatDuration(durationS(Math.round(reading.labour.totalS.value)))}`],
    },
    { label: 'Version', lines: [`${data.version}, ${data.day}`] },
    { label: 'In this sheet', lines: ['Materials, chart, word chart, steps'] },
  ]
}

/** Places in a stored row: the numbers of its runs added up. */
function placesIn(cells: string): number {
  return cells.split(' ').reduce((sum, run) => sum + (Number.parseInt(run, 10) || 0), 0)
}
