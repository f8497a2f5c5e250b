import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import { slotIndex } from '../../../../shared-core/chart/chart.ts'
import { extraKey, threadKey } from '../../../../shared-core/design/bill.ts'
import { formatThread } from '../../../../shared-core/units/format-length.ts'
import { formatCount, formatNumber } from '../../../../shared-core/units/format-number.ts'
import { threadMm } from '../../../../shared-core/units/length.ts'
import { slotStamps } from './chart-marks.ts'
import type { SheetData } from './sheet-data.ts'
import { LINE } from './sheet-frame.ts'
import { EDGE, INK, rule, SOFT, text } from './sheet-style.ts'
import { cutWords, printedMg } from './sheet-words.ts'
import type { SheetWriter } from './sheet-writer.ts'
import { capitalised, type SlotLook } from './slot-look.ts'

/** What a kit holds beyond the need, so that no student runs out. @source common practice: 10 to 15 % */
const KIT_SPARE = 0.12

/** Writes what is needed: beads by slot, thread and needle, findings, tools. */
export function writeMaterials(
  writer: SheetWriter,
  data: SheetData,
  lookOf: (slot: number) => SlotLook,
): void {
  writer.newPage()
  writer.title('Materials')
  const kit = data.audience === 'class'
  const per = kit ? 'for one kit' : `for one ${data.body.unitName}`
  writer.note(
    kit
      ? `Beads ${per}. Counts are exact; grams hold beads put aside as misshapen, and ${KIT_SPARE * 100} % to spare.`
      : `Beads ${per}. Counts are exact; grams are what to have at hand, with beads put aside as misshapen.`,
  )
  beadTable(writer, data, lookOf)
  threadAndNeedle(writer, data)
  findings(writer, data)
  tools(writer, data)
}

function grams(mg: number, { decimal }: SheetData): string {
  return `${formatNumber((mg / 1000).toFixed(2), decimal)} g`
}

/** Where the table's columns stand, mm from the left; figures end at theirs. */
const AT = { letter: 9, name: 19, size: 86, finish: 122, count: 154 } as const

function beadTable(writer: SheetWriter, data: SheetData, lookOf: (slot: number) => SlotLook): void {
  writer.down(0.5)
  tableHead(writer)
  const used = data.reading.counts.filter(({ count }) => count > 0)
  let allMg = 0
  for (const slot of used) {
    const index = slotIndex(slot.label) ?? 0
    const needMg = slot.needMg.value
    const needed = data.audience === 'class' ? needMg * (1 + KIT_SPARE) : needMg
    // The sum is then the sum of what is printed.
    const have = printedMg(needed)
    allMg += have
    tableRow(writer, data, { look: lookOf(index), count: slot.count, haveMg: have })
  }
  writer.keep(2)
  const { frame } = writer
  const y = writer.y
  const strong = { face: 'text-strong', align: 'right' } as const
  writer.put(
    text(frame.left + AT.name, y, 'In all', { face: 'text-strong' }),
    text(frame.left + AT.count, y, formatCount(data.reading.beads), strong),
    text(frame.right, y, grams(allMg, data), strong),
  )
  writer.down(1)
}

function tableHead(writer: SheetWriter): void {
  const { left, right } = writer.frame
  writer.keep(4)
  const y = writer.y
  const style = { sizePt: 8.5, colour: SOFT } as const
  writer.put(
    text(left, y, 'Chart', style),
    text(left + AT.name, y, 'Bead', style),
    text(left + AT.size, y, 'Size', style),
    text(left + AT.finish, y, 'Finish', style),
    text(left + AT.count, y, 'Beads', { ...style, align: 'right' }),
    text(right, y, 'To have', { ...style, align: 'right' }),
    rule(left, right, y + 1.6, { colour: INK, widthMm: 0.3 }),
  )
  writer.down(1.5)
}

type TableRow = Readonly<{ look: SlotLook; count: number; haveMg: number }>

function tableRow(writer: SheetWriter, data: SheetData, { look, count, haveMg }: TableRow): void {
  const { left, right } = writer.frame
  const own = data.audience === 'self' ? [look.code, look.drawer] : []
  const names = writer.wrapped(look.name, 'text', 9.5, AT.size - AT.name - 3, 2)
  const under = own.filter((words) => words !== '').join(', ')
  const lines = names.length + (under === '' ? 0 : 1)
  const pages = writer.pages.length
  writer.keep(lines + 1)
  if (writer.pages.length > pages) tableHead(writer)
  const y = writer.y
  const form = look.form
  const size = writer.wrapped(form?.name ?? '', 'text', 9.5, AT.finish - AT.size - 3, 2)
  writer.put(
    ...slotStamps(look, {
      places: [[left + 2.8, y - 1.2]],
      widthMm: 5,
      heightMm: 5,
      turnRad: 0,
    }),
    text(left + AT.letter, y, look.letter, { face: 'text-strong', sizePt: 11 }),
    ...names.map((line, i) => text(left + AT.name, y + i * LINE, line)),
    ...size.map((line, i) => text(left + AT.size, y + i * LINE, line)),
    text(left + AT.finish, y, look.finish),
    text(left + AT.count, y, formatCount(count), { align: 'right' }),
    text(right, y, grams(haveMg, data), { align: 'right' }),
  )
  if (under !== '') {
    const line = writer.wrapped(under, 'text', 8.5, AT.size - AT.name - 3, 1)[0] ?? ''
    writer.put(text(left + AT.name, y + names.length * LINE, line, { sizePt: 8.5, colour: SOFT }))
  }
  const taken = Math.max(lines, size.length)
  writer.put(rule(left, right, y + (taken - 1) * LINE + 2.1, { colour: EDGE, widthMm: 0.12 }))
  writer.down(taken + 0.5)
}

function threadAndNeedle(writer: SheetWriter, data: SheetData): void {
  const { body, reading, decimal, tables } = data
  const thread = findThread(tables, body.threadId)
  const chosen = data.fillings[threadKey]?.name
  const name = thread?.name ?? body.threadId
  writer.heading('Thread and needle')
  const spool = formatThread(threadMm(Math.ceil(reading.thread.spoolMm.value)), { decimal })
  const spread = formatThread(threadMm(Math.ceil(reading.thread.spoolMm.high)), { decimal })
  line(writer, chosen === undefined ? name : `${capitalised(chosen)} (${name})`)
  if (body.threadStrands === 2) line(writer, 'Worked doubled: two strands in every pass')
  line(writer, `${spool} in all, up to ${spread} with a loose hand. Cut ${cutWords(data)}.`)
  line(writer, `Beading needle, size ${body.needleSize}`)
}

function findings(writer: SheetWriter, data: SheetData): void {
  const { body, audience, fillings } = data
  const shown = body.extras.filter(({ kind, count }) => {
    return count > 0 && (kind === 'finding' || audience === 'self')
  })
  if (shown.length === 0) return
  writer.heading(audience === 'self' ? 'Findings and packaging' : 'Findings')
  for (const extra of shown) {
    const filling = fillings[extraKey(extra.id)]
    const name = filling?.name ?? extra.name
    const code = audience === 'self' && filling?.code ? ` (${filling.code})` : ''
    const declared = filling?.declaration ? `. ${filling.declaration}` : ''
    line(writer, `${extra.count} × ${name}${code}${declared}`)
  }
}

function tools(writer: SheetWriter, data: SheetData): void {
  writer.heading(data.audience === 'class' ? 'Bring or find on the table' : 'Tools')
  const { body, tables } = data
  const forms = new Set(body.palette.map(({ formId }) => findForm(tables, formId)?.family))
  line(writer, 'Scissors or a thread cutter, a bead mat, a tape measure, good light from the side')
  if (body.extras.some(({ kind }) => kind === 'finding'))
    line(writer, 'Flat pliers for the findings')
  if (body.parts.some((part) => part.kind === 'panel' && part.chart.stitch === 'loom')) {
    line(writer, 'A bead loom wide enough for the chart')
  }
  if (forms.has('bugle')) line(writer, 'A fine file for the sharp ends of bugles')
  if (data.audience === 'class') line(writer, 'A stop bead in a colour that is not in the design')
}

function line(writer: SheetWriter, words: string): void {
  writer.paragraph({
    words,
    leadMm: 4,
    before: (x, y) => [text(x, y, '–', { colour: SOFT })],
  })
}
