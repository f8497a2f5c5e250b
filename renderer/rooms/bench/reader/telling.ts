import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import type { SlotBead } from '../../designs/page/slot-beads.ts'
import type { Telling } from './tell-line.ts'

/** A slot's bead by its name in stock, else as the chart calls it. */
export function beadNameOf(bead: SlotBead | undefined): string {
  return bead?.material?.name ?? bead?.slot.name ?? 'bead'
}

/** How the words of one design are told: with the beads of the colourway and the workshop's figures. */
export function telling(body: DesignBody, beads: readonly SlotBead[], format: Format): Telling {
  const stitches = new Map(
    body.parts.flatMap((part) =>
      part.kind === 'panel' ? [[part.id, fromChartJson(part.chart).stitch] as const] : [],
    ),
  )
  return {
    beadName: (slot) => beadNameOf(beads[slot]),
    thread: format.thread,
    stitchOf: (partId) => stitches.get(partId),
  }
}
