import { memo, useState } from 'react'
import type { Format } from '../../../app/format.ts'
import { PartsPanel } from '../parts/parts-panel.tsx'
import type { TableModel } from './table-model.ts'
import type { Draft } from './use-draft.ts'
import { useTableView } from './use-table-model.ts'

/** The parts of the design that is drawn, folded away until they are wanted. */
export const TableParts = memo(function TableParts({
  draft,
  model,
  format,
}: Readonly<{ draft: Draft; model: TableModel; format: Format }>) {
  const panelId = useTableView(model, ({ panel }) => panel?.id)
  const [chosen, setChosen] = useState<string>()
  const [isOpen, setOpen] = useState(false)
  return (
    <details className="table-parts" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Parts, strands and findings</summary>
      {isOpen && (
        <PartsPanel
          body={draft.body}
          onChange={draft.change}
          partId={chosen ?? panelId}
          onPart={(partId) => {
            setChosen(partId)
            const part = draft.body.parts.find(({ id }) => id === partId)
            if (part?.kind === 'panel') model.choosePart(partId)
          }}
          format={format}
        />
      )}
    </details>
  )
})
