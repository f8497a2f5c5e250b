import { useMemo } from 'react'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { useCall } from '../../../app/use-call.ts'
import { type Assembly, assemble } from '../assembly/assemble.ts'
import { isLong, layAcross } from '../assembly/lay-across.ts'

/** How to draw a design once it is seen, and the key of its picture. */
export type Drawing = Readonly<{ key: string; assembly: () => Assembly | undefined }>

/** Reads what is drawn of a design, once its place on the wall has been seen. */
export function useDrawing(id: string, isSeen: boolean): Drawing | undefined {
  const tables = useBeadTables()
  const { value } = useCall('designs.drawing', isSeen ? { id } : null)
  return useMemo(() => value && drawingOf(value, tables), [value, tables])
}

function drawingOf(
  { versionId, body, looks }: CallOutput<'designs.drawing'>,
  tables: BeadTables,
): Drawing {
  return {
    key: `${versionId} ${looks.map(({ hex, finish }) => hex + finish).join(' ')}`,
    assembly: () => {
      const whole = assemble({ body, tables, looks, copies: 'all' })
      return whole && isLong(whole.scene) && !body.parts.some(({ kind }) => kind === 'strand')
        ? layAcross(whole)
        : whole
    },
  }
}
