import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { TextArea } from '../../../ui/text-input.tsx'
import type { DesignDetail } from '../page/open-design.ts'
import type { SheetChoice } from './sheet-wish.ts'

const AUDIENCES = [
  { value: 'self', label: 'My bench' },
  { value: 'sale', label: 'For sale' },
  { value: 'class', label: 'A class' },
] as const

const PAPERS = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'Letter' },
] as const

const SAYS = {
  self: 'With drawers, codes and packaging from your own stock.',
  sale: 'For a buyer: no drawers or codes of yours, and what may be done with it.',
  class: 'For students: grams are for one kit, with some to spare.',
} as const

/** Whom the sheet is for, on which paper, of which colourway and version. */
export function SheetOptions({
  design,
  choice,
  onChange,
}: Readonly<{
  design: DesignDetail
  choice: SheetChoice
  onChange: (choice: SheetChoice) => void
}>) {
  const set = (changes: Partial<SheetChoice>) => onChange({ ...choice, ...changes })
  return (
    <section className="print-options" aria-label="Pattern sheet">
      <h2>Pattern sheet</h2>
      <SegmentedChoice
        label="For"
        value={choice.audience}
        options={AUDIENCES}
        onChange={(audience) => set({ audience })}
      />
      <p className="designs-quiet">{SAYS[choice.audience]}</p>
      <SegmentedChoice
        label="Paper"
        value={choice.paper}
        options={PAPERS}
        onChange={(paper) => set({ paper })}
      />
      {design.colourways.length > 1 && (
        <Select
          label="Colourway"
          value={choice.colourwayId}
          options={design.colourways.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(colourwayId) => set({ colourwayId })}
        />
      )}
      {design.versions.length > 1 && (
        <Select
          label="Version"
          value={String(choice.version)}
          options={design.versions.map(({ version, note }) => ({
            value: String(version),
            label: `Version ${version}`,
            detail: note,
          }))}
          onChange={(version) => set({ version: Number(version) })}
        />
      )}
      {choice.audience !== 'self' && (
        <TextArea
          label="What the reader may do with it"
          optional
          rows={3}
          value={choice.terms}
          hint={
            choice.terms.length > 500
              ? undefined
              : 'Printed at the end, such as how many pieces may be sold.'
          }
          error={
            choice.terms.length > 500
              ? `That is ${choice.terms.length} letters; the sheet has room for 500.`
              : undefined
          }
          onChange={(terms) => set({ terms })}
        />
      )}
    </section>
  )
}
