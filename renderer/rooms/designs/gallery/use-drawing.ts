import { useMemo } from 'react'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { useCall } from '../../../app/use-call.ts'
import { type SmallPicture, smallPicture } from '../assembly/small-picture.ts'

/** Reads what is drawn of a design, once its place on the wall has been seen. */
export function useDrawing(id: string, isSeen: boolean): SmallPicture | undefined {
  const tables = useBeadTables()
  const { value } = useCall('designs.drawing', isSeen ? { id } : null)
  return useMemo(() => value && smallPicture({ ...value, tables }), [value, tables])
}
