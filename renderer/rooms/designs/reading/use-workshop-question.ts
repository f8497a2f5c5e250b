import { useMemo } from 'react'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
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
  const palette = body?.palette
  const calibrations = useMemo(
    () => palette && slotCalibrations(palette, referenceTables, { materials, beadsPerGram }),
    [palette, materials, beadsPerGram],
  )
  return useMemo(
    () =>
      body === undefined || calibrations === undefined || learned === undefined
        ? undefined
        : { body, calibrations, learned },
    [body, calibrations, learned],
  )
}
