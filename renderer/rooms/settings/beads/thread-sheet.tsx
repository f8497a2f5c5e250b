import { useState } from 'react'
import type { Thread } from '../../../../shared-core/beads/thread.ts'
import { fractionToNumber } from '../../../../shared-core/units/fraction.ts'
import { parseNumber } from '../../../../shared-core/units/parse-number.ts'
import type { DecimalMark, ParseResult } from '../../../../shared-core/units/parse-options.ts'
import { useAct } from '../../../app/use-act.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { Select } from '../../../ui/select.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { BasisChoice } from './basis-choice.tsx'
import { SpreadField } from './spread-field.tsx'
import { constructionWords, figure, type ThreadEntry } from './table-words.ts'
import { keptSpread, shownSpread, type TypedBasis } from './typed-spread.ts'

const constructions = (['braided', 'twisted', 'flat', 'bonded'] as const).map((value) => ({
  value,
  label: constructionWords[value],
}))

/** A thread of the workshop’s own. */
export function ThreadSheet({
  thread,
  onClose,
}: Readonly<{ thread: ThreadEntry | undefined; onClose: () => void }>) {
  const { decimal } = useFormat()
  const [name, setName] = useState(thread?.name ?? '')
  const [construction, setConstruction] = useState<Thread['construction']>(
    thread?.construction ?? 'braided',
  )
  const [diameter, setDiameter] = useState(() => shownSpread(thread?.diameterMm, decimal))
  const [tex, setTex] = useState<readonly [string, number | undefined]>([
    thread?.tex === undefined ? '' : figure(thread.tex, decimal),
    thread?.tex,
  ])
  const [basis, setBasis] = useState<TypedBasis | undefined>(
    thread === undefined ? 'measured' : undefined,
  )
  const [asked, setAsked] = useState(false)
  const save = useAct('tables.saveThread', { said: (_, input) => `Saved ${input.thread.name}` })
  const remove = useAct('tables.removeThread', { said: () => `Removed ${thread?.name ?? 'it'}` })
  const refusal = save.refusal ?? remove.refusal
  const isPlaced = refusal?.field?.startsWith('thread.') === true
  const errorOf = (field: string) =>
    refusal?.field === `thread.${field}` ? `${refusal.message} ${refusal.next}` : undefined
  /** What was refused is being mended: it is judged anew when it is saved. */
  const mending =
    <T,>(set: (value: T) => void) =>
    (value: T) => {
      save.forgetRefusal()
      set(value)
    }
  const isUnread = tex[0].trim() !== '' && tex[1] === undefined
  async function keep() {
    setAsked(true)
    const diameterMm = keptSpread(diameter, basis)
    if (diameterMm === undefined || name.trim() === '' || isUnread) return
    const answer = await save.act({
      thread: {
        ...(thread === undefined ? {} : { id: thread.id }),
        ...{ name: name.trim(), construction, diameterMm },
        ...(tex[1] === undefined ? {} : { tex: tex[1] }),
      },
    })
    if (answer.ok) onClose()
  }
  async function takeAway() {
    if (thread !== undefined && (await remove.act({ id: thread.id })).ok) onClose()
  }
  return (
    <SideSheet
      open
      title={thread === undefined ? 'New thread' : thread.name}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" icon="check" busy={save.isBusy} onClick={() => void keep()}>
            {thread?.origin === 'reference' ? 'Use my figures' : 'Save'}
          </Button>
          {thread !== undefined && thread.origin !== 'reference' && (
            <Button
              kind="danger"
              icon="remove"
              busy={remove.isBusy}
              onClick={() => void takeAway()}
            >
              {thread.origin === 'replaces' ? 'Back to the table’s' : 'Remove'}
            </Button>
          )}
        </>
      }
    >
      {refusal !== undefined && !isPlaced && <RefusalNotice refusal={refusal} />}
      <TextInput
        label="Name"
        value={name}
        longest={60}
        error={asked && name.trim() === '' ? 'Give it a name of your own.' : errorOf('name')}
        onChange={mending(setName)}
      />
      <Select
        label="Made as"
        value={construction}
        options={constructions}
        onChange={setConstruction}
      />
      <SpreadField
        label="How thick it lies in a hole"
        hint="Wind it close round a pencil: ten turns, their width, a tenth of that."
        unit="mm"
        decimal={decimal}
        typed={diameter}
        error={asked && diameter.text.trim() === '' ? 'Give this figure.' : errorOf('diameterMm')}
        onTyped={mending(setDiameter)}
      />
      <QuantityInput
        label="Grams in 1000 m"
        hint="Tex, where the spool says it."
        optional
        unit="g"
        text={tex[0]}
        parse={(text) => parseTex(text, decimal)}
        onText={(text, value) => mending(setTex)([text, value])}
        error={errorOf('tex')}
      />
      <BasisChoice value={basis} onChange={setBasis} />
    </SideSheet>
  )
}

function parseTex(text: string, decimal: DecimalMark): ParseResult<number> {
  const read = parseNumber(text.replace(/\s*(g|tex)$/i, ''), { decimal, typed: text })
  if (!read.ok) return read
  const value = fractionToNumber(read.value)
  return { ok: true, value: { value, understood: `${figure(value, decimal)} g` } }
}
