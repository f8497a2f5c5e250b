import { useMemo, useState } from 'react'
import { FileRoom } from '../../../../app/file-room.tsx'
import type { FileBytes } from '../../../../app/files.ts'
import { useBeadTables } from '../../../../app/use-bead-tables.ts'
import { useFormat } from '../../../../app/use-format.ts'
import { RefusalNotice } from '../../../../ui/notice.tsx'
import { nameFromFile } from '../../bring-in/name-from-file.ts'
import { firstDraft } from '../../draft/draft.ts'
import { DraftDesk } from '../../draft/draft-desk.tsx'
import { toWays } from '../to-ways.ts'
import { CropBox } from './crop-box.tsx'
import { CropFields } from './crop-fields.tsx'
import type { DecodedPicture } from './decode-picture.ts'
import { DifferenceTold } from './difference-told.tsx'
import { PictureFields } from './picture-fields.tsx'
import { pictureJob } from './picture-job.ts'
import { firstSettings } from './picture-settings.ts'
import { pictureSlots } from './picture-slots.ts'
import { stockBeads } from './stock-beads.ts'
import { useDecoded } from './use-decoded.ts'
import { useMaterials } from './use-materials.ts'
import { usePictureChart } from './use-picture-chart.ts'
import './picture-page.css'

const FILTERS = [{ name: 'Picture', extensions: ['png', 'jpg', 'jpeg', 'webp', 'gif'] }]

/** The way in for a picture: choose, crop, see it in beads beside it, add. */
export function PicturePage() {
  return (
    <FileRoom
      title="From a picture"
      back={toWays}
      asks="Choose a picture"
      filters={FILTERS}
      picture="tray"
      teaches="A photograph or drawing as PNG, JPEG or WebP. You crop it, and see it in beads beside it while you choose how many and which. It never leaves this computer."
    >
      {(file) => <PictureFile file={file} />}
    </FileRoom>
  )
}

function PictureFile({ file }: Readonly<{ file: FileBytes }>) {
  const decoded = useDecoded(file, { exact: false })
  if (decoded === undefined) return <p role="status">Reading {file.fileName}…</p>
  if (!decoded.ok) return <RefusalNotice refusal={decoded.error} />
  return <PictureDesk decoded={decoded.value} fileName={file.fileName} />
}

function PictureDesk({
  decoded: { picture, notes },
  fileName,
}: Readonly<{ decoded: DecodedPicture; fileName: string }>) {
  const format = useFormat()
  const [draft, setDraft] = useState({ ...firstDraft, name: nameFromFile(fileName) })
  const [settings, setSettings] = useState(() => firstSettings(picture))
  const { source, beads, job } = usePictureJob(settings, draft)
  const work = usePictureChart(picture, job.ok ? job.value : undefined)
  const { last, standing } = work
  const slots = useMemo(() => last && pictureSlots(last.job, last.made), [last])
  const isEmpty = slots?.chart.rows.length === 0
  const onCrop = (crop: typeof settings.crop) => setSettings({ ...settings, crop })
  const fields = (
    <PictureFields {...{ settings, source, beads: beads.length, format }} onChange={setSettings} />
  )
  const told = (
    <>
      <CropFields {...{ crop: settings.crop, size: picture, decimal: format.decimal, onCrop }} />
      {job.ok ? <DifferenceTold {...{ work, format }} /> : <RefusalNotice refusal={job.error} />}
      {isEmpty && <p role="status">Everything in this part is see-through: there is no bead.</p>}
    </>
  )
  const crop = <CropBox {...{ picture, crop: settings.crop, onCrop }} />
  if (slots === undefined || isEmpty) {
    return (
      <div className="draft">
        <div className="draft-seen">
          {crop}
          {told}
        </div>
        <div className="draft-said">{fields}</div>
      </div>
    )
  }
  return (
    <DraftDesk
      {...{ draft, told }}
      {...slots}
      onDraft={setDraft}
      materials={source === 'stock' ? slots.materials : undefined}
      inStock={source === 'stock' ? slots.inStock : undefined}
      note={`From the picture ${fileName}`}
      blocked={blockedBy(job.ok, standing.kind)}
      isWaiting={job.ok && standing.kind === 'working'}
      source={<Understood notes={notes} fileName={fileName} />}
      beside={crop}
    >
      {fields}
    </DraftDesk>
  )
}

function usePictureJob(settings: ReturnType<typeof firstSettings>, draft: typeof firstDraft) {
  const format = useFormat()
  const materials = useMaterials()
  const tables = useBeadTables()
  const { formId, threadId } = draft
  const { onHand } = settings
  const isStocked = useMemo(
    () => stockBeads(materials, { formId, onHand: false }).length > 0,
    [materials, formId],
  )
  const source = settings.source ?? (isStocked ? 'stock' : 'free')
  const beads = useMemo(
    () => stockBeads(materials, { formId, onHand }),
    [materials, formId, onHand],
  )
  const job = useMemo(
    () => pictureJob(settings, { draft: { formId, threadId }, source, beads, format, tables }),
    [settings, formId, threadId, source, beads, format, tables],
  )
  return { source, beads, job }
}

function blockedBy(isAsked: boolean, standing: string): string | undefined {
  if (!isAsked) return 'Mend the settings first.'
  if (standing === 'done') return undefined
  return standing === 'working' ? 'The picture is still being worked out.' : 'Work it out first.'
}

function Understood({ notes, fileName }: Readonly<{ notes: readonly string[]; fileName: string }>) {
  return (
    <div className="draft-understood">
      <p>Drag over the picture to choose the part that is used; the beads beside it follow.</p>
      {notes.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p className="designs-quiet">From {fileName}. Nothing is written yet.</p>
    </div>
  )
}
