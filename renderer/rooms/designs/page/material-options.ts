import { ciede2000 } from '../../../../shared-core/colour/ciede2000.ts'
import { labOfHex } from '../../../../shared-core/colour/lab.ts'
import type { PaletteSlot } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import type { Option } from '../../../ui/select.tsx'
import type { MaterialRow } from './open-design.ts'

/** Beads of stock that fit a slot, nearest in colour first, each with what is free of it. */
export function beadOptions(
  materials: readonly MaterialRow[],
  slot: PaletteSlot,
  format: Format,
): readonly Option<string>[] {
  const wanted = labOfHex(slot.colourHex)
  const distance = ({ colourHex }: MaterialRow) =>
    colourHex === null ? Number.POSITIVE_INFINITY : ciede2000(wanted, labOfHex(colourHex))
  return materials
    .filter(({ kind, formId }) => kind === 'bead' && (formId === null || formId === slot.formId))
    .map((material) => ({ material, away: distance(material) }))
    .toSorted((a, b) => a.away - b.away)
    .map(({ material }) => toOption(material, format))
}

/** Materials of a kind; those of a form first. */
export function kindOptions(
  materials: readonly MaterialRow[],
  kind: MaterialRow['kind'],
  format: Format,
  formId?: string,
): readonly Option<string>[] {
  return materials
    .filter((material) => material.kind === kind)
    .toSorted((a, b) => Number(b.formId === formId) - Number(a.formId === formId))
    .map((material) => toOption(material, format))
}

function toOption(material: MaterialRow, format: Format): Option<string> {
  const { id, name, available, unit, colourHex, finish } = material
  const look = colourHex === null ? undefined : { hex: colourHex, finish: finish ?? 'opaque' }
  return {
    value: id,
    label: name,
    detail: `${format.quantity(available, unit)} free`,
    ...(look === undefined ? {} : { look }),
  }
}
