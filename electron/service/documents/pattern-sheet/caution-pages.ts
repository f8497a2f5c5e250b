import { missingScripts } from '../fonts.ts'
import type { SheetData } from './sheet-data.ts'
import { SOFT, text } from './sheet-style.ts'
import type { SheetWriter, Stretch } from './sheet-writer.ts'

/** Writes the cautions, what the reader may do with the sheet, and which letters could not be printed. */
export function writeCautions(writer: SheetWriter, data: SheetData): void {
  const all = cautions(data).map(
    (words): Stretch => ({
      words,
      leadMm: 4,
      before: (x, y) => [text(x, y, '–', { colour: SOFT })],
    }),
  )
  // The cautions stand together: a page that ends within them is put aside half read.
  writer.keep(TITLE_LINES + all.flatMap((caution) => writer.linesOf(caution)).length)
  writer.title('Take care')
  for (const caution of all) writer.paragraph(caution)
  writer.gap(0.5)
  writer.note(
    'This is general information, not legal advice: check the rules of the country of sale.',
  )
  if (data.terms.trim() !== '') {
    writer.heading('Using this sheet')
    writer.paragraph({ words: data.terms })
  }
  const missing = missingScripts(textsOf(data))
  if (missing.length > 0) {
    writer.note(`Letters this sheet's fonts lack stand as empty boxes: ${missing.join(', ')}.`)
  }
}

/** A title and the free lines before it, and the note that ends the cautions. */
const TITLE_LINES = 7

function cautions({ audience, body, caution, fillings }: SheetData): readonly string[] {
  const hasFinding = body.extras.some(({ kind }) => kind === 'finding')
  const declared = Object.values(fillings).some((filling) => filling?.declaration)
  return [
    ...(caution.trim() === '' ? [] : [caution]),
    'Not a toy. Beads and findings are small parts: keep them from children under 3.',
    'Needles: count them before and after, and never leave one in the work or on a chair.',
    'Thread burner or lighter: the tip stays hot. Keep it from cloth, hair and the beads’ finish.',
    'Eyes and hands: every 20 minutes look far away, put the work down and stretch; work in good light.',
    ...(hasFinding
      ? [
          declared
            ? 'Metal at the skin: what the supplier declares stands with the findings. Tell anyone with an allergy before they wear it.'
            : 'Metal at the skin: choose findings with a nickel statement, and tell anyone with an allergy before they wear it.',
        ]
      : []),
    'Old or unknown beads may hold lead or cadmium: use them only with a supplier’s statement. Dyed beads may stain.',
    ...(audience === 'class' ? ['In class: count needles out and back at every table.'] : []),
  ]
}

/** Every text of the sheet that a maker wrote. */
export function textsOf(data: SheetData): readonly string[] {
  const { body } = data
  return [
    data.name,
    data.colourway,
    data.maker,
    data.caution,
    data.terms,
    body.unitName,
    ...body.palette.map(({ name }) => name),
    ...body.parts.map(({ name }) => name),
    ...body.extras.map(({ name }) => name),
    ...Object.values(data.fillings).flatMap((filling) =>
      filling === undefined
        ? []
        : [filling.name, filling.code, filling.drawer, filling.declaration],
    ),
  ]
}
