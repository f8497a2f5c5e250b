import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import type { Assembly, PlacedPart } from '../assembly/assemble.ts'
import { fillLevels } from '../layers/pass-levels.ts'
import type { PlainPart } from '../reading/plain-reading.ts'
import type { SlotBead } from './slot-beads.ts'

type TellBead = Readonly<{
  assembly: Assembly
  body: DesignBody
  parts: readonly PlainPart[] | undefined
  beads: readonly SlotBead[]
  format: Format
}>

/** One bead of the picture in words: where it is, which bead it is, how often the thread runs through it. */
export function tellBead(bead: number, { assembly, body, parts, beads, format }: TellBead): string {
  const placed = assembly.parts.find(
    ({ firstBead, beads: count }) => bead >= firstBead && bead < firstBead + count,
  )
  if (placed === undefined) return ''
  const number = bead - placed.firstBead
  const slot = beads[assembly.scene.slotOf[bead] ?? 0]
  const name =
    slot === undefined ? '' : `${slot.slot.label} ${slot.material?.name ?? slot.slot.name}`
  return [
    copyOf(placed) + placeOf(body, placed, number),
    name,
    passesOf(parts, placed.partId, number, format),
  ]
    .filter((words) => words !== '')
    .join(': ')
}

/** Which of several alike it belongs to; the first goes without saying. */
function copyOf({ copy, isMirrored }: PlacedPart): string {
  if (copy === 0) return ''
  return isMirrored ? 'Mirrored, counted from the right: ' : `Copy ${copy + 1}: `
}

function placeOf({ parts }: DesignBody, { name, index }: PlacedPart, bead: number): string {
  if (index === undefined) return `${name}, bead ${bead + 1}`
  const row = index.rowOf[bead] ?? 0
  const panel = parts.filter(({ kind }) => kind === 'panel').length > 1 ? `${name}, row` : 'Row'
  return `${panel} ${row + 1}, bead ${bead - (index.rowStart[row] ?? 0) + 1}`
}

function passesOf(
  parts: readonly PlainPart[] | undefined,
  partId: string,
  bead: number,
  format: Format,
): string {
  const part = parts?.find((one) => one.partId === partId)
  if (part === undefined) return ''
  const [passes, holds] = [part.passes[bead] ?? 0, part.holds[bead] ?? 0]
  const fill = fillLevels[part.fill[bead] ?? 0]?.name.toLowerCase() ?? ''
  return `${format.counted(passes, 'pass', 'passes')} of ${format.count(holds)} that go through, ${fill}`
}
