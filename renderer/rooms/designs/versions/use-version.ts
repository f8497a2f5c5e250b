import { useMemo } from 'react'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { useCall } from '../../../app/use-call.ts'
import { type Assembly, assemble } from '../assembly/assemble.ts'
import type { DesignDetail, MaterialRow } from '../page/open-design.ts'
import { slotBeads } from '../page/slot-beads.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import { useReading } from '../reading/use-reading.ts'
import { useWorkshopQuestion } from '../reading/use-workshop-question.ts'

/** One version as it is compared: its body, what was read of it, and how it is drawn. */
export type VersionShown = Readonly<{
  design: DesignDetail | undefined
  reading: PlainReading | undefined
  assembly: Assembly | undefined
  refusal: Refusal | undefined
}>

/** Reads and draws one version, in the beads of the design's first colourway. */
export function useVersion(
  id: string,
  version: number | undefined,
  materials: readonly MaterialRow[],
): VersionShown {
  const tables = useBeadTables()
  const { value, refusal } = useCall('designs.read', version === undefined ? null : { id, version })
  const answer = useReading(
    useWorkshopQuestion(value?.body, value?.colourways[0]?.materials, value?.beadsPerGram),
  )
  const assembly = useMemo(() => {
    if (value === undefined) return undefined
    const { body, colourways } = value
    const looks = slotBeads(body.palette, colourways[0]?.materials ?? {}, materials)
    return assemble({ body, tables, looks })
  }, [value, materials, tables])
  return {
    design: value,
    reading: answer?.ok === true ? answer.value : undefined,
    assembly,
    refusal: refusal ?? (answer?.ok === false ? answer.error : undefined),
  }
}
