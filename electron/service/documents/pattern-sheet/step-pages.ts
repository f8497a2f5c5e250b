import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import type { Strand } from '../../../../shared-core/design/design.ts'
import { writeLengths } from '../../../../shared-core/route/write-lengths.ts'
import { formatThread } from '../../../../shared-core/units/format-length.ts'
import { threadMm } from '../../../../shared-core/units/length.ts'
import type { SheetData } from './sheet-data.ts'
import { SOFT, text } from './sheet-style.ts'
import { cutWords } from './sheet-words.ts'
import type { SheetWriter } from './sheet-writer.ts'
import { tellSteps } from './tell-steps.ts'

/** Letters of bead-by-bead steps printed for a part, at most: four pages or so. */
const MOST_LETTERS = 12_000

/** Writes the steps: the order of work, then every part bead by bead as far as that is of use. */
export function writeSteps(writer: SheetWriter, data: SheetData): void {
  writer.title('Steps')
  writer.heading('The order of work')
  orderOfWork(data).forEach((words, i) => {
    numbered(writer, i + 1, words)
  })
  const toldOf = (partId: string) => {
    const reading = data.reading.parts.find((part) => part.partId === partId)
    return reading === undefined ? [] : withLengths(tellSteps(reading.steps), data)
  }
  const { parts } = data.body
  for (const part of parts.filter(({ kind }) => kind === 'panel')) {
    partSteps(writer, `${part.name}, bead by bead`, toldOf(part.id))
  }
  const strands = parts.filter((part) => part.kind === 'strand')
  if (strands.length === 0) return
  partSteps(
    writer,
    'Strands, bead by bead',
    strands.map((strand) => `${strandHead(strand)}: ${[...toldOf(strand.id)].join(' ')}`),
  )
}

/** A strand's name; of several that hang each from a bead of its own, the last is told. */
function strandHead({ name, anchor, copies }: Strand): string {
  return anchor !== undefined && copies > 1 ? `${name}, the last of ${copies}` : name
}

/** Steps with their lengths of thread as the rest of the sheet writes them: `1410 mm` is 1.41 m. */
function* withLengths(steps: Iterable<string>, { decimal }: SheetData): Generator<string> {
  const write = (mm: number) => formatThread(threadMm(mm), { decimal })
  for (const words of steps) yield writeLengths(words, write)
}

function numbered(writer: SheetWriter, number: number, words: string): void {
  writer.paragraph({
    words,
    leadMm: 7,
    before: (x, y) => [text(x + 4, y, String(number), { face: 'text-strong', align: 'right' })],
  })
}

function orderOfWork(data: SheetData): readonly string[] {
  const { body } = data
  const panels = body.parts.filter((part) => part.kind === 'panel')
  const strands = body.parts.filter((part) => part.kind === 'strand')
  const carried = new Set(strands.map(({ findingId }) => findingId))
  const findings = body.extras.filter(({ kind, id }) => kind === 'finding' && !carried.has(id))
  return [
    'Sort the beads by letter. Put aside those that are thin, fat, chipped or blocked.',
    `Cut the thread: ${cutWords(data)}.`,
    ...panels.map(({ name, chart, copies }) => {
      const times = copies > 1 ? `, ${copies} times` : ''
      return `Work ${name} in ${stitchName(chart.stitch)}${times}, from the chart or the word chart.`
    }),
    ...(strands.length > 0
      ? [`Add ${strands.length > 3 ? `the ${strands.length} strands` : names(strands)}.`]
      : []),
    ...(findings.length > 0
      ? [`Attach ${findings.map(({ count, name }) => `${count} × ${name}`).join(', ')}.`]
      : []),
    'Weave in both ends with half hitches, pull gently to test, and cut close.',
  ]
}

function names(parts: readonly Readonly<{ name: string }>[]): string {
  return parts.map(({ name }) => name).join(', ')
}

function partSteps(writer: SheetWriter, heading: string, paragraphs: Iterable<string>): void {
  let letters = 0
  for (const words of paragraphs) {
    if (letters === 0) writer.heading(heading)
    else if (letters + words.length > MOST_LETTERS) {
      writer.note('So the work goes on: follow the word chart, turning and locking as before.')
      return
    }
    letters += words.length
    dash(writer, words)
  }
}

function dash(writer: SheetWriter, words: string): void {
  writer.paragraph({
    words,
    sizePt: 9,
    leadMm: 4,
    before: (x, y) => [text(x, y, '–', { colour: SOFT })],
  })
}
