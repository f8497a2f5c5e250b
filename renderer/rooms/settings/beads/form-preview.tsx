import { findForm } from '../../../../shared-core/beads/bead-tables.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import type { FormDraft } from './form-draft.ts'
import { ScaleBead } from './scale-bead.tsx'

/** The largest bead that a table takes, mm. */
const MOST_MM = 60
const isDrawn = (mm: number | undefined): mm is number =>
  mm !== undefined && mm > 0 && mm <= MOST_MM

/** The bead as typed beside one everybody knows, both at the table’s scale. */
export function FormPreview({
  draft: { family, figures },
}: Readonly<{ draft: Pick<FormDraft, 'family' | 'figures'> }>) {
  const known = findForm(useBeadTables(), 'cylinder-11/0')
  const diameterMm = figures.diameterMm.spread?.value
  const lengthMm = figures.lengthMm.spread?.value
  return (
    <div className="tables-preview">
      {isDrawn(diameterMm) && isDrawn(lengthMm) ? (
        <ScaleBead family={family} diameterMm={diameterMm} lengthMm={lengthMm} />
      ) : (
        <span className="tables-preview-none" />
      )}
      {known !== undefined && (
        <>
          <ScaleBead
            family={known.family}
            diameterMm={known.diameterMm.value}
            lengthMm={known.lengthMm.value}
          />
          <span className="quiet">beside a cylinder bead 11/0</span>
        </>
      )}
    </div>
  )
}
