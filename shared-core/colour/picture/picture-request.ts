import type { Refusal } from '../../refusal.ts'
import { err, ok, type Result } from '../../result.ts'
import { rgbOfHex } from '../srgb.ts'
import type { CellLayout, Picture, PictureCrop, PictureFit } from './picture.ts'

/** A bead that may be used, and its colour. */
export type PictureBead = Readonly<{ id: string; hex: string }>

/** Which colours to use: as many as wanted, freely chosen, or beads at hand (at most `most` of them). */
export type PictureColours =
  | Readonly<{ kind: 'free'; count: number }>
  | Readonly<{ kind: 'beads'; beads: readonly PictureBead[]; most?: number }>

/**
 * Changes of tone before colours are chosen: `lightness` is added to L (-50 to 50), `contrast`
 * stretches L about the middle and `chroma` the colourfulness (both 0 to 3, 1 changes nothing).
 */
export type PictureTone = Readonly<{ lightness: number; contrast: number; chroma: number }>

/** How steps between colours are softened: not at all, by passing errors on, or by a fixed pattern. */
export type Dithering = 'none' | 'diffusion' | 'ordered'

/** A picture to be turned into the cells of a chart. */
export type PictureRequest = Readonly<{
  picture: Picture
  /** The whole picture when absent. */
  crop?: PictureCrop
  cells: CellLayout
  fit: PictureFit
  /** What lies behind see-through parts, `#RRGGBB`; without it cells under half covered stay empty. */
  background?: string
  tone?: PictureTone
  colours: PictureColours
  dithering: Dithering
  /** Patches of fewer touching cells are recoloured; 1 keeps every single bead. */
  smallestPatch: number
}>

/** Most cells a picture is turned into. */
export const MAX_PICTURE_CELLS = 1_000_000
/** Most colours chosen freely, and most beads to choose from. */
export const MAX_FREE_COLOURS = 256
export const MAX_PICTURE_BEADS = 5000
/** Largest patch limit. */
export const MAX_SMALLEST_PATCH = 1000

function refuse(code: string, field: string, message: string, next: string): Refusal {
  return { code, field, message, next }
}

function pictureRefusals({ picture, crop }: PictureRequest): Refusal[] {
  const { rgba, width, height } = picture
  const whole = Number.isSafeInteger(width) && Number.isSafeInteger(height)
  if (!whole || width < 1 || height < 1 || rgba.length !== 4 * width * height) {
    const message = `A picture of ${width} by ${height} pixels does not have ${rgba.length} bytes.`
    return [refuse('picture-size', 'picture', message, 'Choose a picture file again.')]
  }
  if (crop === undefined) return []
  const { x, y, width: across, height: down } = crop
  const inside = x >= 0 && y >= 0 && x + across <= width && y + down <= height
  if (inside && across >= 1 && down >= 1) return []
  const message = 'The cropped part lies partly outside the picture or is smaller than a pixel.'
  return [refuse('picture-crop', 'crop', message, 'Draw the crop again, inside the picture.')]
}

function cellRefusals({ x, y, pitchX, pitchY }: CellLayout): Refusal[] {
  if (x.length === 0 || x.length !== y.length || x.length > MAX_PICTURE_CELLS) {
    const message = `A chart of ${x.length} cells cannot take a picture.`
    const next = `Choose a chart of 1 to ${MAX_PICTURE_CELLS} cells.`
    return [refuse('picture-cells', 'cells', message, next)]
  }
  let finite = pitchX > 0 && pitchY > 0 && Number.isFinite(pitchX + pitchY)
  for (let i = 0; finite && i < x.length; i++) {
    finite = Number.isFinite((x[i] as number) + (y[i] as number))
  }
  if (finite) return []
  const message = 'The cells of the chart have no size or place.'
  return [refuse('picture-cells', 'cells', message, 'Choose a bead form whose size is known.')]
}

const isCount = (value: number, most: number) =>
  Number.isSafeInteger(value) && value >= 1 && value <= most

function colourRefusals(colours: PictureColours): Refusal[] {
  if (colours.kind === 'free') {
    if (isCount(colours.count, MAX_FREE_COLOURS)) return []
    const message = `${colours.count} colours cannot be chosen.`
    const next = `Ask for 1 to ${MAX_FREE_COLOURS} colours.`
    return [refuse('picture-colours', 'colours.count', message, next)]
  }
  const { beads, most = 1 } = colours
  if (!isCount(beads.length, MAX_PICTURE_BEADS) || !isCount(most, MAX_PICTURE_BEADS)) {
    const message = `${beads.length} beads to choose ${most} from cannot be used.`
    const next = `Choose 1 to ${MAX_PICTURE_BEADS} beads.`
    return [refuse('picture-beads', 'colours.beads', message, next)]
  }
  return beads.flatMap(({ id, hex }, index) =>
    rgbOfHex(hex) === undefined
      ? [
          refuse(
            'picture-bead-colour',
            `colours.beads.${index}.hex`,
            `The bead ${id} has no colour (${hex}).`,
            'Give the bead a colour, or leave it out.',
          ),
        ]
      : [],
  )
}

function settingRefusals({ background, tone, smallestPatch }: PictureRequest): Refusal[] {
  const refusals: Refusal[] = []
  if (background !== undefined && rgbOfHex(background) === undefined) {
    const message = `${background} is no colour.`
    refusals.push(refuse('picture-background', 'background', message, 'Give it as #RRGGBB.'))
  }
  if (!isCount(smallestPatch, MAX_SMALLEST_PATCH)) {
    const message = `A smallest patch of ${smallestPatch} beads cannot be used.`
    const next = `Give 1 to ${MAX_SMALLEST_PATCH} beads; 1 keeps every single bead.`
    refusals.push(refuse('picture-smallest-patch', 'smallestPatch', message, next))
  }
  const { lightness, contrast, chroma } = tone ?? { lightness: 0, contrast: 1, chroma: 1 }
  const inRange = (value: number, low: number, high: number) => value >= low && value <= high
  if (!inRange(lightness, -50, 50) || !inRange(contrast, 0, 3) || !inRange(chroma, 0, 3)) {
    const message = 'A change of tone lies beyond what can be done.'
    const next = 'Keep lightness within -50 to 50, contrast and colour within 0 to 3.'
    refusals.push(refuse('picture-tone', 'tone', message, next))
  }
  return refusals
}

/** Checks a picture request; `picture-...` refusals name the field, all that are found. */
export function checkPictureRequest(
  request: PictureRequest,
): Result<PictureRequest, readonly Refusal[]> {
  const refusals = [
    ...pictureRefusals(request),
    ...cellRefusals(request.cells),
    ...colourRefusals(request.colours),
    ...settingRefusals(request),
  ]
  return refusals.length > 0 ? err(refusals) : ok(request)
}
