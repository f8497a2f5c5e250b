import type { BeadFamily, BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import type { CallInput } from '../../../../shared-core/contract/calls.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import {
  keptSpread,
  shownSpread,
  type TypedBasis,
  type TypedSpread,
  timesSpread,
} from './typed-spread.ts'

export type FigureKey = 'diameterMm' | 'lengthMm' | 'holeMm' | 'beadsPerGram' | 'cullRate'

/** A bead form as it is being typed; culls in percent. */
export type FormDraft = Readonly<{
  id: string | undefined
  name: string
  family: BeadFamily
  sizeLabel: string
  /** Chosen by the maker; each figure keeps its own until then. */
  basis: TypedBasis | undefined
  figures: Readonly<Record<FigureKey, TypedSpread>>
}>

/** The draft of a form, or of a new one. */
export function formDraft(form: BeadForm | undefined, decimal: DecimalMark): FormDraft {
  const shown = (key: FigureKey) =>
    shownSpread(form && (key === 'cullRate' ? timesSpread(form[key], 100) : form[key]), decimal)
  return {
    id: form?.id,
    name: form?.name ?? '',
    family: form?.family ?? 'rocaille',
    sizeLabel: form?.sizeLabel ?? '',
    basis: form === undefined ? 'measured' : undefined,
    figures: {
      diameterMm: shown('diameterMm'),
      lengthMm: shown('lengthMm'),
      holeMm: shown('holeMm'),
      beadsPerGram: shown('beadsPerGram'),
      cullRate: shown('cullRate'),
    },
  }
}

/** The first figure that cannot be read or is missing. */
export function missingFigure({ figures }: FormDraft): FigureKey | undefined {
  return (Object.keys(figures) as FigureKey[]).find((key) => figures[key].spread === undefined)
}

/** The form a draft says, once it has a name and every figure can be read. */
export function draftForm(draft: FormDraft): CallInput<'tables.saveForm'>['form'] | undefined {
  const { id, family, sizeLabel, basis, figures } = draft
  const name = draft.name.trim()
  const kept = (key: FigureKey) => keptSpread(figures[key], basis)
  const [diameterMm, lengthMm, holeMm] = [kept('diameterMm'), kept('lengthMm'), kept('holeMm')]
  const [beadsPerGram, culls] = [kept('beadsPerGram'), kept('cullRate')]
  if (name === '' || !diameterMm || !lengthMm || !holeMm || !beadsPerGram || !culls)
    return undefined
  return {
    ...(id === undefined ? {} : { id }),
    ...{ name, family, sizeLabel: sizeLabel.trim() },
    ...{ diameterMm, lengthMm, holeMm, beadsPerGram, cullRate: timesSpread(culls, 0.01) },
  }
}
