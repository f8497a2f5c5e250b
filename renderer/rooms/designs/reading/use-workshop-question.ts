import { useMemo } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { useLearned } from '../../../app/use-learned.ts'
import type { DesignDetail, Fillings } from '../page/open-design.ts'
import type { ReadingQuestion } from './reading-question.ts'
import { slotCalibrations } from './slot-calibrations.ts'

const NONE = {}

/**
 * A design asked of as this workshop makes it: its own weighings of the beads that fill the slots, its
 * pace, culls and thread. `undefined` until that is known, so that no other figures are ever shown.
 */
export function useWorkshopQuestion(
  body: DesignBody | undefined,
  materials: Fillings = NONE,
  beadsPerGram: DesignDetail['beadsPerGram'] = NONE,
): ReadingQuestion | undefined {
  const learned = useLearned()
  const tables = useBeadTables()
  const palette = body?.palette
  const calibrations = useMemo(
    () => palette && slotCalibrations(palette, tables, { materials, beadsPerGram }),
    [palette, tables, materials, beadsPerGram],
  )
  return useMemo(
    () =>
      body === undefined || calibrations === undefined || learned === undefined
        ? undefined
        : { body, calibrations, learned, tables },
    [body, calibrations, learned, tables],
  )
}
