import { FileRoom } from '../../../app/file-room.tsx'
import type { FileBytes } from '../../../app/files.ts'
import { toWays } from '../new/to-ways.ts'
import { GridText } from './grid-text.tsx'
import { PixelGrid } from './pixel-grid.tsx'

const FILTERS = [
  { name: 'Grid file', extensions: ['csv', 'tsv', 'txt', 'png'] },
  { name: 'Letters, a bead each', extensions: ['csv', 'tsv', 'txt'] },
  { name: 'Pixels, a bead each', extensions: ['png'] },
]

/** The way in for a chart from a grid file: choose, look, say what the file does not, add. */
export function GridPage() {
  return (
    <FileRoom
      title="Bring in a chart"
      back={toWays}
      asks="Choose a chart"
      filters={FILTERS}
      picture="strand"
      teaches="A CSV has one line a row from the top and a letter a bead, parted by commas: A,B,B,A. Before a semicolon a line may say how many half beads it is set in. A PNG has one pixel a bead, see-through where there is none."
    >
      {(file) => (isPicture(file) ? <PixelGrid file={file} /> : <GridText file={file} />)}
    </FileRoom>
  )
}

/** How picture files begin, in base64: PNG, JPEG, GIF, WebP. */
const PICTURES = ['iVBORw0KGg', '/9j/', 'R0lGOD', 'UklGR']

/** By its first bytes, or by its name where it has none of its own. */
function isPicture({ fileName, base64 }: FileBytes): boolean {
  return PICTURES.some((begins) => base64.startsWith(begins)) || /\.png$/i.test(fileName)
}
