import type { BeadTables } from '../../../../../shared-core/beads/user-forms.ts'
import type { Chart } from '../../../../../shared-core/chart/chart.ts'
import { layoutChart } from '../../../../../shared-core/chart/layout.ts'
import { blankChart } from '../../../../../shared-core/chart/outlines/blank-chart.ts'
import { sizeInBeads } from '../../../../../shared-core/chart/outlines/size-in-beads.ts'
import { stitchPitch } from '../../../../../shared-core/chart/stitch-pitch.ts'
import type {
  PictureColours,
  PictureRequest,
} from '../../../../../shared-core/colour/picture/picture-request.ts'
import type { Refusal } from '../../../../../shared-core/refusal.ts'
import { err, ok, type Result } from '../../../../../shared-core/result.ts'
import type { DecimalMark } from '../../../../../shared-core/units/parse-options.ts'
import { withMark } from '../../../../../shared-core/units/with-mark.ts'
import type { Format } from '../../../../app/format.ts'
import type { Draft } from '../../draft/draft.ts'
import { beadSizeOf } from '../bead-size.ts'
import { tooManyBeads } from '../drawable.ts'
import { extentOf } from '../extent-of.ts'
import { type ColourSource, evenHeight, type PictureSettings } from './picture-settings.ts'
import type { StockBead } from './stock-beads.ts'

/** Everything of a request but the picture, which the worker holds already. */
export type PictureAsked = Omit<PictureRequest, 'picture'>

/** A picture's chart to be worked out: its empty chart, what to ask, and the beads it may take. */
export type PictureJob = Readonly<{
  chart: Chart
  asked: PictureAsked
  beads: readonly StockBead[]
  formId: string
}>

type JobContext = Readonly<{
  draft: Pick<Draft, 'formId' | 'threadId'>
  source: ColourSource
  beads: readonly StockBead[]
  format: Format
  tables: BeadTables
}>

/** What to ask for a picture's settings; or why that cannot be asked. */
export function pictureJob(
  settings: PictureSettings,
  { draft, source, beads, format, tables }: JobContext,
): Result<PictureJob, Refusal> {
  const { stitch, crop } = settings
  const { form, size } = beadSizeOf(draft, tables)
  const pitch = stitchPitch(stitch, size)
  const across = extentOf(settings.across, format.decimal)
  if (across === undefined) return err(noSize('across', format.decimal))
  const widthMm = across.kind === 'mm' ? across.mm : across.count * 2 * pitch.halfMm
  const down = settings.isEven ? evenHeight(widthMm, crop) : extentOf(settings.down, format.decimal)
  if (down === undefined) return err(noSize('down', format.decimal))
  const wanted = sizeInBeads(stitch, { across, down }, size)
  const fault = tooManyBeads(wanted, format.count)
  if (fault !== undefined) return err(fault)
  if (source === 'stock' && beads.length === 0) return err(noBeads())
  const blank = blankChart({ stitch, ...wanted })
  if (!blank.ok) return blank
  const { xMm, yMm } = layoutChart(blank.value, form, { threadMm: size.threadMm })
  const cells = { x: xMm, y: yMm, pitchX: 2 * pitch.halfMm, pitchY: pitch.downMm }
  const asked = { ...toneAndTidiness(settings), crop, cells, fit: 'cover' as const }
  const colours = coloursOf(settings, source === 'stock' ? beads : undefined)
  return ok({ chart: blank.value, asked: { ...asked, colours }, beads, formId: draft.formId })
}

function coloursOf(
  { colours }: PictureSettings,
  beads: readonly StockBead[] | undefined,
): PictureColours {
  if (beads === undefined) return { kind: 'free', count: colours }
  return {
    kind: 'beads',
    beads: beads.map(({ id, colourHex }) => ({ id, hex: colourHex })),
    most: Math.min(colours, beads.length),
  }
}

function toneAndTidiness({
  brightness,
  contrast,
  colourfulness,
  dithering,
  smallestPatch,
}: PictureSettings) {
  const isChanged = brightness !== 0 || contrast !== 0 || colourfulness !== 0
  const tone = {
    lightness: brightness,
    contrast: 1 + contrast / 100,
    chroma: 1 + colourfulness / 100,
  }
  return { dithering, smallestPatch, ...(isChanged ? { tone } : {}) }
}

function noSize(field: string, decimal: DecimalMark): Refusal {
  return {
    code: 'picture-no-size',
    message: 'The size cannot be read yet.',
    next: withMark('Type it such as 40 mm, 1.5 in or 60 beads.', decimal),
    field,
  }
}

function noBeads(): Refusal {
  return {
    code: 'picture-no-beads',
    message: 'No bead of this form in stock has a colour to choose.',
    next: 'Choose another bead form, count beads that are not on hand too, or take free colours.',
  }
}
