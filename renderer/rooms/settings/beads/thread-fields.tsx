import { fractionToNumber } from '../../../../shared-core/units/fraction.ts'
import { parseNumber } from '../../../../shared-core/units/parse-number.ts'
import type { DecimalMark, ParseResult } from '../../../../shared-core/units/parse-options.ts'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { Select } from '../../../ui/select.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { BasisChoice } from './basis-choice.tsx'
import { SpreadField } from './spread-field.tsx'
import { constructionWords, figure } from './table-words.ts'
import type { ThreadDraft } from './thread-draft.ts'

const constructions = (['braided', 'twisted', 'flat', 'bonded'] as const).map((value) => ({
  value,
  label: constructionWords[value],
}))

/** The fields that can say what is wrong with them, as the contract names them. */
export const threadFieldNames = ['thread.name', 'thread.diameterMm', 'thread.tex'] as const
export type ThreadFieldName = (typeof threadFieldNames)[number]

type ThreadFieldsProps = Readonly<{
  draft: ThreadDraft
  decimal: DecimalMark
  errorAt: (field: ThreadFieldName) => string | undefined
  onDraft: (draft: ThreadDraft) => void
}>

/** What is typed of a thread. */
export function ThreadFields({ draft, decimal, errorAt, onDraft }: ThreadFieldsProps) {
  const set = (part: Partial<ThreadDraft>) => onDraft({ ...draft, ...part })
  return (
    <>
      <TextInput
        label="Name"
        missing="Give it a name of your own."
        value={draft.name}
        longest={60}
        error={errorAt('thread.name')}
        onChange={(name) => set({ name })}
      />
      <Select
        label="Made as"
        value={draft.construction}
        options={constructions}
        onChange={(construction) => set({ construction })}
      />
      <SpreadField
        label="How thick it lies in a hole"
        hint="Wind it close round a pencil: ten turns, their width, a tenth of that."
        unit="mm"
        decimal={decimal}
        typed={draft.diameter}
        error={errorAt('thread.diameterMm')}
        onTyped={(diameter) => set({ diameter })}
      />
      <QuantityInput
        label="Grams in 1000 m"
        hint="Tex, where the spool says it."
        optional
        unit="g"
        text={draft.tex.text}
        parse={(text) => parseTex(text, decimal)}
        onText={(text, value) => set({ tex: { text, value } })}
        error={errorAt('thread.tex')}
      />
      <BasisChoice value={draft.basis} onChange={(basis) => set({ basis })} />
    </>
  )
}

function parseTex(text: string, decimal: DecimalMark): ParseResult<number> {
  const read = parseNumber(text.replace(/\s*(g|tex)$/i, ''), { decimal, typed: text })
  if (!read.ok) return read
  const value = fractionToNumber(read.value)
  return { ok: true, value: { value, understood: `${figure(value, decimal)} g` } }
}
