import { useMemo, useState } from 'react'
import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import { toChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { readPixelGrid } from '../../../../shared-core/chart/read-pixel-grid.ts'
import type { FileBytes } from '../../../app/files.ts'
import { hrefTo } from '../../../app/place.ts'
import { useFormat } from '../../../app/use-format.ts'
import { ButtonLink } from '../../../ui/button.tsx'
import { Checkbox } from '../../../ui/checkbox.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { Select } from '../../../ui/select.tsx'
import { firstDraft } from '../draft/draft.ts'
import { DraftDesk } from '../draft/draft-desk.tsx'
import { stitchOptions } from '../draft/trade-options.ts'
import type { DecodedPicture } from '../new/picture/decode-picture.ts'
import { paletteOf } from '../new/picture/palette-of.ts'
import { stockBeads } from '../new/picture/stock-beads.ts'
import { useDecoded } from '../new/picture/use-decoded.ts'
import { useMaterials } from '../new/picture/use-materials.ts'
import { NEW } from '../places.ts'
import { nameFromFile } from './name-from-file.ts'
import { nearestOf } from './nearest-of.ts'

/** A chart read from a picture of one pixel a bead. */
export function PixelGrid({ file }: Readonly<{ file: FileBytes }>) {
  const decoded = useDecoded(file, { exact: true })
  if (decoded === undefined) return <p role="status">Reading {file.fileName}…</p>
  if (!decoded.ok) {
    const isGrid = decoded.error.code.startsWith('grid-')
    return isGrid ? <NotAGrid refusal={decoded.error} /> : <RefusalNotice refusal={decoded.error} />
  }
  return <Pixels decoded={decoded.value} fileName={file.fileName} />
}

function Pixels({
  decoded: { picture, notes },
  fileName,
}: Readonly<{ decoded: DecodedPicture; fileName: string }>) {
  const format = useFormat()
  const materials = useMaterials()
  const [draft, setDraft] = useState({ ...firstDraft, name: nameFromFile(fileName) })
  const [stitch, setStitch] = useState<StitchKind>('brick')
  const [isSnapped, setSnapped] = useState(false)
  const { formId } = draft
  const read = useMemo(() => readPixelGrid(picture, { stitch }), [picture, stitch])
  const chart = useMemo(() => (read.ok ? toChartJson(read.value.chart) : undefined), [read])
  const beads = useMemo(
    () => (isSnapped ? stockBeads(materials, { formId, onHand: false }) : []),
    [materials, formId, isSnapped],
  )
  const filled = useMemo(
    () => (read.ok ? paletteOf(nearestOf(read.value.colours, beads), formId) : undefined),
    [read, beads, formId],
  )
  if (!read.ok) return <NotAGrid refusal={read.error} />
  if (chart === undefined || filled === undefined) return null
  return (
    <DraftDesk
      {...{ draft, chart, palette: filled.palette }}
      onDraft={setDraft}
      materials={isSnapped ? filled.materials : undefined}
      note={`Brought in from ${fileName}`}
      source={
        <div className="draft-understood">
          {[...notes, ...read.value.notes].map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <p className="designs-quiet">From {fileName}. Nothing is written yet.</p>
        </div>
      }
    >
      <Select label="Stitch" value={stitch} options={stitchOptions} onChange={setStitch} />
      <Checkbox
        label="Take the nearest beads from stock"
        hint={
          isSnapped
            ? `${format.counted(beads.length, 'bead')} of this form in stock have a colour.`
            : 'Otherwise the picture’s own colours are kept.'
        }
        checked={isSnapped}
        onChange={setSnapped}
      />
    </DraftDesk>
  )
}

function NotAGrid({
  refusal,
}: Readonly<{ refusal: Parameters<typeof RefusalNotice>[0]['refusal'] }>) {
  return (
    <RefusalNotice
      refusal={refusal}
      actions={
        <ButtonLink href={hrefTo({ room: 'designs', id: NEW, sub: 'picture' })}>
          Begin from a picture
        </ButtonLink>
      }
    />
  )
}
