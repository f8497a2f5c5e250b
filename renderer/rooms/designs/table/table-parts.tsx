import { useState } from 'react'
import type { Format } from '../../../app/format.ts'
import { PartsPanel } from '../parts/parts-panel.tsx'
import type { TableModel } from './table-model.ts'
import type { TableView } from './table-state.ts'
import type { Draft } from './use-draft.ts'

/** The parts of the design that is drawn, folded away until they are wanted. */
export function TableParts({
  draft,
  model,
  view,
  format,
}: Readonly<{ draft: Draft; model: TableModel; view: TableView; format: Format }>) {
  const [chosen, setChosen] = useState<string>()
  return (
    <details className="table-parts">
      <summary>Parts, strands and findings</summary>
      <PartsPanel
        body={draft.body}
        onChange={draft.change}
        partId={chosen ?? view.panel?.id}
        onPart={(partId) => {
          setChosen(partId)
          const part = draft.body.parts.find(({ id }) => id === partId)
          if (part?.kind === 'panel') model.choosePart(partId)
        }}
        format={format}
      />
    </details>
  )
}
