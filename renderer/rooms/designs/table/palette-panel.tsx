import { memo } from 'react'
import type { SlotCount } from '../../../../shared-core/design/reading.ts'
import type { Format } from '../../../app/format.ts'
import { IconButton } from '../../../ui/button.tsx'
import { Swatch } from '../../../ui/swatch.tsx'
import type { SlotBead } from '../page/slot-beads.ts'
import { MOST_SLOTS, withNewSlot } from './palette-edits.ts'
import type { TableModel } from './table-model.ts'
import type { Draft } from './use-draft.ts'
import { useTableView } from './use-table-model.ts'

type PalettePanelProps = Readonly<{
  model: TableModel
  draft: Draft
  beads: readonly SlotBead[]
  counts: readonly SlotCount[] | undefined
  format: Format
  /** Opens a slot to be named or coloured. */
  onEditSlot: (at: number) => void
}>

/** The slots to draw with: letter, bead, name and how many a unit takes. */
export const PalettePanel = memo(function PalettePanel({
  model,
  draft,
  beads,
  counts,
  format,
  onEditSlot,
}: PalettePanelProps) {
  const chosen = useTableView(model, ({ slot }) => slot)
  function add(): void {
    const formId = model.view().panel?.formId ?? draft.body.palette[0]?.formId ?? ''
    const next = withNewSlot(draft.body, formId)
    draft.change(`Add slot ${next.palette.at(-1)?.label ?? ''}`, next)
    model.chooseSlot(next.palette.length - 1)
  }
  return (
    <section className="table-palette" aria-label="Palette">
      <header className="table-palette-head">
        <h2>Palette</h2>
        <IconButton
          icon="edit"
          label={`Name or colour slot ${beads[chosen]?.slot.label ?? ''}`}
          disabled={beads.length === 0}
          onClick={() => onEditSlot(chosen)}
        />
        <IconButton
          icon="add"
          label="Add a slot"
          disabled={beads.length >= MOST_SLOTS}
          onClick={add}
        />
      </header>
      <ul>
        {beads.map(({ slot, material, hex, finish }, at) => (
          <li key={slot.label}>
            <button
              type="button"
              className="table-slot"
              aria-pressed={at === chosen}
              aria-keyshortcuts={at < 9 ? String(at + 1) : undefined}
              onClick={() => model.chooseSlot(at)}
              onDoubleClick={() => onEditSlot(at)}
            >
              <span className="table-slot-letter">{slot.label}</span>
              <Swatch look={{ hex, finish }} />
              <span className="table-slot-name">{material?.name ?? slot.name}</span>
              <span className="table-slot-count tabular">
                {format.count(counts?.find(({ label }) => label === slot.label)?.count ?? 0)}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
})
