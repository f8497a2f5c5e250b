import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { sizeWords } from '../figures/size-words.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import type { SlotBead } from './slot-beads.ts'

/** The picture in words, for those who do not see it. */
export function describePiece({
  body,
  reading,
  beads,
  format,
}: Readonly<{
  body: DesignBody
  reading: PlainReading | undefined
  beads: readonly SlotBead[]
  format: Format
}>): string {
  if (reading === undefined) return 'The design is being read.'
  const slots = reading.counts.map(({ label, count }) => {
    const bead = beads.find(({ slot }) => slot.label === label)
    return `${format.count(count)} ${bead?.material?.name ?? bead?.slot.name ?? ''} in slot ${label}`
  })
  const size = sizeWords(reading, format)
  return `${format.counted(reading.beads, 'bead')} a ${body.unitName}, ${size}: ${slots.join(', ')}.`
}
