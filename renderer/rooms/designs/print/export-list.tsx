import { useMemo, useState } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { formatCount } from '../../../../shared-core/units/format-number.ts'
import { toBase64 } from '../../../app/base64.ts'
import { saveFile } from '../../../app/files.ts'
import { refusalOf } from '../../../app/refusal-error.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { ask } from '../../../app/use-call.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { type Looks, MOST, paintPng, panelScene, pictureSize } from './chart-picture.ts'
import { fileNameOf } from './file-name.ts'

type ExportAs = 'chart-svg' | 'grid' | 'word-chart' | 'counts'

const SIZES = [
  { value: '8', label: 'Small' },
  { value: '20', label: 'Medium' },
  { value: '48', label: 'Large' },
] as const

type ExportListProps = Readonly<{
  name: string
  body: DesignBody
  looks: Looks
  /** Which design, colourway and version the files are of. */
  of: Readonly<{ designId: string; colourwayId: string; version: number }>
}>

/** The design as other files: plain formats that any program reads. */
export function ExportList({ name, body, looks, of }: ExportListProps) {
  const tables = useBeadTables()
  const panels = useMemo(() => body.parts.filter((part) => part.kind === 'panel'), [body])
  const [partId, setPartId] = useState<string>()
  const [size, setSize] = useState<(typeof SIZES)[number]['value']>('20')
  const [busy, setBusy] = useState<ExportAs | 'png'>()
  const [refusal, setRefusal] = useState<Refusal>()
  const panel = panels.find(({ id }) => id === partId) ?? panels[0]
  const scene = useMemo(
    () => panel && panelScene(panel, body, looks, tables),
    [panel, body, looks, tables],
  )
  const measured = scene && pictureSize(scene, Number(size))

  async function save(what: ExportAs | 'png', make: () => Promise<void>) {
    setBusy(what)
    setRefusal(undefined)
    try {
      await make()
    } catch (error) {
      setRefusal(refusalOf(error))
    } finally {
      setBusy(undefined)
    }
  }
  const saveAs = (as: ExportAs, title: string) =>
    save(as, async () => {
      const isOfPanel = as === 'chart-svg' || as === 'grid'
      const part = isOfPanel && panel !== undefined ? { partId: panel.id } : {}
      await saveFile(title, await ask('designs.export', { ...of, as, ...part }))
    })
  const savePng = () =>
    save('png', async () => {
      if (scene === undefined || measured === undefined) return
      if (!measured.ok) return setRefusal(measured.error)
      const blob = await paintPng(scene, measured.value)
      if (blob.size > MOST.bytes) return setRefusal(TOO_HEAVY)
      const words = [name, ...(panels.length > 1 && panel ? [panel.name] : []), 'picture']
      await saveFile('Save the picture', {
        fileName: fileNameOf(words, 'png'),
        base64: toBase64(new Uint8Array(await blob.arrayBuffer())),
      })
    })
  const button = (as: ExportAs, words: string, title: string) => (
    <Button icon="file" busy={busy === as} onClick={() => void saveAs(as, title)}>
      {words}
    </Button>
  )
  return (
    <section className="print-exports" aria-label="Other files">
      <h2>Other files</h2>
      {panels.length > 1 && (
        <Select
          label="Panel"
          value={panel?.id ?? null}
          options={panels.map((one) => ({ value: one.id, label: one.name }))}
          onChange={setPartId}
        />
      )}
      {scene !== undefined && (
        <>
          <SegmentedChoice label="Picture size" value={size} options={SIZES} onChange={setSize} />
          <p className="designs-quiet">{sizeWords(Number(size), measured)}</p>
          <Button icon="file" busy={busy === 'png'} onClick={() => void savePng()}>
            Picture of the beads (PNG)
          </Button>
          {button('chart-svg', 'Chart to scale up (SVG)', 'Save the chart')}
          {button('grid', 'Chart as a grid (CSV)', 'Save the grid')}
        </>
      )}
      {button('word-chart', 'Word chart (text)', 'Save the word chart')}
      {button('counts', 'Counts and grams (CSV)', 'Save the counts')}
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
    </section>
  )
}

function sizeWords(
  pxPerBead: number,
  measured: ReturnType<typeof pictureSize> | undefined,
): string {
  const per = `${pxPerBead} pixels a bead`
  if (measured?.ok !== true) return `${per}: too large for one picture`
  const { widthPx, heightPx } = measured.value
  return `${per}, ${formatCount(widthPx)} × ${formatCount(heightPx)} in all`
}

const TOO_HEAVY: Refusal = {
  code: 'picture-too-heavy',
  message: 'That picture takes more than 36 MiB.',
  next: 'Choose fewer pixels a bead, or save the chart as SVG.',
}
