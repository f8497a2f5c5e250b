import { useMemo } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { type SmallPicture, smallPicture } from '../assembly/small-picture.ts'
import type { Fillings, MaterialRow } from '../page/open-design.ts'
import { type SlotBead, slotBeads } from '../page/slot-beads.ts'

/** A piece in the beads of a colourway: what fills each slot, and how to draw it. */
export type Piece = SmallPicture & Readonly<{ beads: readonly SlotBead[] }>

/** Puts a colourway's beads into a design. */
export function usePiece(
  versionId: string,
  body: DesignBody,
  fillings: Fillings,
  materials: readonly MaterialRow[],
): Piece {
  const tables = useBeadTables()
  return useMemo(() => {
    const beads = slotBeads(body.palette, fillings, materials)
    return { beads, ...smallPicture({ versionId, body, tables, looks: beads }) }
  }, [versionId, body, fillings, materials, tables])
}
