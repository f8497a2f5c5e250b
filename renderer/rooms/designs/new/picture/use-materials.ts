import { useMemo } from 'react'
import { useCall } from '../../../../app/use-call.ts'
import type { MaterialRow } from '../../page/open-design.ts'

const NONE: readonly MaterialRow[] = []

/** Every bead of stock; the same list until stock changes. */
export function useMaterials(): readonly MaterialRow[] {
  const { value } = useCall('materials.list', { kind: 'bead' })
  return useMemo(() => value?.materials ?? NONE, [value])
}
