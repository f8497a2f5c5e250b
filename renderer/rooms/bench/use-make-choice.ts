import { useState } from 'react'
import { useCall } from '../../app/use-call.ts'
import type { MakeStart } from './make-start.ts'
import { useOrderLine } from './order-choice.tsx'

/** What is to be made, as it is being chosen. */
export type MakeChoice = ReturnType<typeof useMakeChoice>

/**
 * What is made, as a sheet lets it be chosen: the design, its colourway, how many and for which order.
 * `request` is what the contract is told of it once all of that is known.
 */
export function useMakeChoice(start: MakeStart) {
  const [designId, setDesign] = useState(start.designId ?? null)
  const [chosen, setColourway] = useState(start.colourwayId ?? null)
  const [units, setUnits] = useState<readonly [text: string, value: number | undefined]>([
    String(start.units ?? 1),
    start.units ?? 1,
  ])
  const designs = useCall('designs.list', {}).value?.designs ?? []
  const design = useCall('designs.read', designId === null ? null : { id: designId }).value
  const first = design?.id === designId ? design?.colourways[0]?.id : undefined
  const colourwayId = chosen ?? first
  const asked =
    designId === null || colourwayId === undefined ? undefined : { designId, colourwayId }
  const order = useOrderLine(start, asked)
  function chooseDesign(id: string | null) {
    setDesign(id)
    setColourway(null)
  }
  return {
    ...{ start, designs, designId, chooseDesign, design, colourwayId, setColourway },
    ...{ units, setUnits, order },
    /** What was chosen is still being looked up. */
    isLooking: (designId !== null && design?.id !== designId) || order.isWaiting,
    unitName: design?.body.unitName ?? 'unit',
    request:
      asked === undefined || !units[1] || order.isWaiting
        ? null
        : { ...asked, units: units[1], ...order.given },
  }
}
