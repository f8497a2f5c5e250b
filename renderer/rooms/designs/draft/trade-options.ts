import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import { formatNumber } from '../../../../shared-core/units/format-number.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import { capital } from '../../../app/capital.ts'
import type { Option } from '../../../ui/select.tsx'

/** Every stitch to choose from, in a sentence's beginning. */
export const stitchOptions = (
  ['brick', 'peyote', 'square', 'loom', 'ladder', 'herringbone', 'right-angle-weave'] as const
).map((value: StitchKind) => ({ value, label: capital(stitchName(value)) }))

/** Bead forms of the tables, with their size across and along the hole. */
export function formOptions(
  { forms }: BeadTables,
  decimal: DecimalMark,
): readonly Option<string>[] {
  return forms.map(({ id, name, diameterMm, lengthMm }) => ({
    value: id,
    label: name,
    detail: `${mm(diameterMm.value, decimal)} × ${mm(lengthMm.value, decimal)} mm`,
  }))
}

/** Threads of the tables, with their thickness in a hole. */
export function threadOptions(
  { threads }: BeadTables,
  decimal: DecimalMark,
): readonly Option<string>[] {
  return threads.map(({ id, name, diameterMm }) => ({
    value: id,
    label: name,
    detail: `${mm(diameterMm.value, decimal)} mm`,
  }))
}

/** Needles of the tables by size. */
export const needleOptions = referenceTables.needles.map(({ size }) => ({
  value: size,
  label: `Size ${size}`,
}))

function mm(value: number, decimal: DecimalMark): string {
  return formatNumber(String(value), decimal)
}
