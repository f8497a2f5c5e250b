import type { Panel, RouteSettings } from '../../../../shared-core/design/design.ts'
import type { MenuAct } from './act-menu.tsx'
import { plus } from './cells.ts'
import type { TableModel } from './table-model.ts'
import type { Draft } from './use-draft.ts'

/** Where the work on the panel begins: the row under the crosshair, and the side. */
export function startMenu(model: TableModel, draft: Draft): readonly MenuAct[] {
  const { panel, cell, moved, chart } = model.view()
  if (panel === undefined) return []
  const { row } = plus(cell, moved)
  const canStart = panel.chart.stitch === 'brick' || panel.chart.stitch === 'peyote'
  const set = (label: string, route: RouteSettings) => {
    const parts = draft.body.parts.map((part) =>
      part.id === panel.id ? ({ ...panel, route } satisfies Panel) : part,
    )
    draft.change(label, { ...draft.body, parts })
    model.tell(label)
  }
  const { startRow: _row, startSide: _side, ...others } = panel.route
  const side = (startSide: 'left' | 'right'): MenuAct => ({
    name: `start-${startSide}`,
    label: `Begin the first row at the ${startSide}`,
    run: () => set(`Begin at the ${startSide}`, { ...panel.route, startSide }),
  })
  return [
    {
      name: 'start-row',
      label: `Begin the work with row ${row + 1}`,
      disabled: !canStart || row < 0 || row >= chart.rows.length,
      run: () => set(`Begin with row ${row + 1}`, { ...panel.route, startRow: row }),
    },
    side('left'),
    side('right'),
    {
      name: 'start-open',
      label: 'Leave the start to the studio',
      disabled: panel.route.startRow === undefined && panel.route.startSide === undefined,
      run: () => set('Leave the start to the studio', others),
    },
  ]
}
