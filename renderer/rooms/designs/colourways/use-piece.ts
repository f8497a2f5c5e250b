import { useMemo } from 'react'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
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
  const tables = useBeadTables()
  return useMemo(() => {
    const beads = slotBeads(body.palette, fillings, materials)
    return {
      beads,
      key: `${versionId} ${beads.map(({ hex, finish }) => hex + finish).join(' ')}`,
      assembly: () => drawn(body, beads, tables),
    }
  }, [versionId, body, fillings, materials, tables])
}

function drawn(
  body: DesignBody,
  beads: readonly SlotBead[],
  tables: BeadTables,
): Assembly | undefined {
  const whole = assemble({ body, tables, looks: beads, copies: 'all' })
  const isFlat = body.parts.every(({ kind }) => kind === 'panel')
  return whole && isFlat && isLong(whole.scene) ? layAcross(whole) : whole
}
