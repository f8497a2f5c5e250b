import { useMemo } from 'react'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { type Assembly, assemble } from '../assembly/assemble.ts'
import { isLong, layAcross } from '../assembly/lay-across.ts'
import type { Fillings, MaterialRow } from '../page/open-design.ts'
import { type SlotBead, slotBeads } from '../page/slot-beads.ts'

/** A piece in the beads of a colourway: what fills each slot, and how to draw it. */
export type Piece = Readonly<{
  beads: readonly SlotBead[]
  key: string
  assembly: () => Assembly | undefined
}>

/** Puts a colourway's beads into a design. */
export function usePiece(
  versionId: string,
  body: DesignBody,
  fillings: Fillings,
  materials: readonly MaterialRow[],
): Piece {
  return useMemo(() => {
    const beads = slotBeads(body.palette, fillings, materials)
    return {
      beads,
      key: `${versionId} ${beads.map(({ hex, finish }) => hex + finish).join(' ')}`,
      assembly: () => drawn(body, beads),
    }
  }, [versionId, body, fillings, materials])
}

function drawn(body: DesignBody, beads: readonly SlotBead[]): Assembly | undefined {
  const whole = assemble({ body, tables: referenceTables, looks: beads, copies: 'all' })
  const isFlat = body.parts.every(({ kind }) => kind === 'panel')
  return whole && isFlat && isLong(whole.scene) ? layAcross(whole) : whole
}
