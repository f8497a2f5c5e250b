import { type KeyboardEvent, memo, useDeferredValue } from 'react'
import { useFormat } from '../../../app/use-format.ts'
import { RefusalNotice } from '../../../ui/notice.tsx'
import type { DesignDetail, Fillings } from '../page/open-design.ts'
import type { SlotBead } from '../page/slot-beads.ts'
import { useWorkshopQuestion } from '../reading/use-workshop-question.ts'
import { PalettePanel } from './palette-panel.tsx'
import { TableFigures } from './table-figures.tsx'
import type { TableModel } from './table-model.ts'
import { TableParts } from './table-parts.tsx'
import type { Draft } from './use-draft.ts'
import { useLiveBody } from './use-live-body.ts'
import { useLiveReading } from './use-live-reading.ts'

type TableSideProps = Readonly<{
  model: TableModel
  draft: Draft
  design: DesignDetail
  fillings: Fillings
  beads: readonly SlotBead[]
  /** Keys of the tools, which work on the palette too. */
  onKeyDown: (event: KeyboardEvent<HTMLElement>) => void
  onEditSlot: (at: number) => void
}>

/** Beside the drawing: what is drawn with, and what follows from it. */
export const TableSide = memo(function TableSide({
  model,
  draft,
  design,
  fillings,
  beads,
  onKeyDown,
  onEditSlot,
}: TableSideProps) {
  const format = useFormat()
  // The beads under the brush come first; the figures follow as soon as those are shown.
  const body = useDeferredValue(useLiveBody(model, draft.body))
  const { answer, isLate } = useLiveReading(
    useWorkshopQuestion(body, fillings, design.beadsPerGram),
  )
  const reading = answer?.ok === true ? answer.value : undefined
  return (
    <>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of the tools work wherever the focus is on the table */}
      <div className="table-palette-place" onKeyDown={onKeyDown}>
        <PalettePanel
          model={model}
          draft={draft}
          beads={beads}
          counts={reading?.counts}
          format={format}
          onEditSlot={onEditSlot}
        />
      </div>
      {answer?.ok === false && <RefusalNotice refusal={answer.error} />}
      <TableFigures
        design={design}
        body={body}
        reading={reading}
        isLate={isLate}
        colourway={design.colourways[0]}
        format={format}
      />
      <TableParts draft={draft} model={model} format={format} />
    </>
  )
})
