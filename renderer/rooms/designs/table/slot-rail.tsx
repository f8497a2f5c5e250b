import { memo } from 'react'
import { Swatch } from '../../../ui/swatch.tsx'
import type { SlotBead } from '../page/slot-beads.ts'
import type { TableModel } from './table-model.ts'
import { slotWords } from './tell-cell.ts'
import { useTableView } from './use-table-model.ts'

/** The palette in one narrow column, while the one with names is folded away. */
export const SlotRail = memo(function SlotRail({
  model,
  beads,
}: Readonly<{ model: TableModel; beads: readonly SlotBead[] }>) {
  const chosen = useTableView(model, ({ slot }) => slot)
  return (
    <section className="table-slot-rail" aria-label="Slots">
      {beads.map(({ slot, hex, finish }, at) => (
        <button
          key={slot.label}
          type="button"
          className="table-slot"
          aria-label={slotWords(at, beads)}
          title={slotWords(at, beads)}
          aria-pressed={at === chosen}
          aria-keyshortcuts={at < 9 ? String(at + 1) : undefined}
          onClick={() => model.chooseSlot(at)}
        >
          <span className="table-slot-letter">{slot.label}</span>
          <Swatch look={{ hex, finish }} />
        </button>
      ))}
    </section>
  )
})
