import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import type { PartReading } from '../../../../shared-core/design/reading.ts'
import type { SheetData } from './sheet-data.ts'
import { SOFT, text } from './sheet-style.ts'
import { cutWords } from './sheet-words.ts'
import type { SheetWriter } from './sheet-writer.ts'

/** Letters of bead-by-bead steps printed for a part, at most: four pages or so. */
const MOST_LETTERS = 12_000

/** Writes the steps: the order of work, then every part bead by bead as far as that is of use. */
export function writeSteps(writer: SheetWriter, data: SheetData): void {
  writer.title('Steps')
  writer.heading('The order of work')
  orderOfWork(data).forEach((words, i) => {
    numbered(writer, i + 1, words)
  })
  for (const part of data.body.parts) {
    const reading = data.reading.parts.find(({ partId }) => partId === part.id)
    if (reading === undefined || reading.steps.length === 0) continue
    writer.heading(`${part.name}, bead by bead`)
    partSteps(writer, reading)
  }
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

function partSteps(writer: SheetWriter, reading: PartReading): void {
  let letters = 0
  const paragraphs = byRow(reading)
  for (const [at, words] of paragraphs.entries()) {
    letters += words.length
    if (letters > MOST_LETTERS && at > 0) {
      const left = paragraphs.length - at
      writer.note(
        `So the work goes on for ${left} more ${left === 1 ? 'stage' : 'stages'}: follow the word chart, turning and locking as before.`,
      )
      return
    }
    writer.paragraph({
      words,
      sizePt: 9,
      leadMm: 4,
      before: (x, y) => [text(x, y, '–', { colour: SOFT })],
    })
  }
}

/** The steps of one row told together; what is done many times over is said once. */
function byRow({ steps }: PartReading): readonly string[] {
  const rows: { row: number; texts: string[] }[] = []
  for (const { row, text: words } of steps) {
    const last = rows.at(-1)
    const begins = /^(Rows? |Thread |Take |Weave |Add |New )/.test(words)
    if (last === undefined || last.row !== row || begins) rows.push({ row, texts: [words] })
    else last.texts.push(words)
  }
  return rows.map(({ texts }) => `${saidOnce(texts).map(saidClauses).join('. ')}.`)
}

function saidClauses(step: string): string {
  return saidOnce(step.split('; ')).join('; ')
}

function saidOnce(texts: readonly string[]): readonly string[] {
  const said: { words: string; times: number }[] = []
  for (const words of texts) {
    const last = said.at(-1)
    if (last?.words.toLowerCase() === words.toLowerCase()) last.times += 1
    else said.push({ words, times: 1 })
  }
  return said.map(({ words, times }) => (times === 1 ? words : `${words} (${times} times)`))
}
