import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { PlainPart } from '../reading/plain-reading.ts'
import type { SlotBead } from './slot-beads.ts'

/** How the lines of a word chart are read. */
export const howToRead =
  '(L) begins at the left, (R) at the right, seen from the front. Lines stand in the order of work. Increase and decrease say how far a row reaches past the row it is worked on, or stays short of it.'

/** Everything as one text to paste or keep. */
export function wordsAsText(
  name: string,
  body: Pick<DesignBody, 'parts'>,
  parts: readonly PlainPart[],
  beads: readonly SlotBead[],
): string {
  const slots = beads.map(({ slot, material }) => `${slot.label}  ${material?.name ?? slot.name}`)
  const texts = parts.map(({ partId, words }) => {
    const part = body.parts.find(({ id }) => id === partId)
    return [...(parts.length > 1 ? [part?.name ?? ''] : []), ...words].join('\n')
  })
  return `${[name, slots.join('\n'), howToRead, ...texts].join('\n\n')}\n`
}
