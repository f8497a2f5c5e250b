import { useEffect, useState } from 'react'
import { extraKey, slotKey, threadKey } from '../../../../shared-core/design/bill.ts'
import type { Format } from '../../../app/format.ts'
import { hrefTo } from '../../../app/place.ts'
import { placeRefusal } from '../../../app/place-refusal.ts'
import { useAct } from '../../../app/use-act.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { Picker } from '../../../ui/picker.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { nearBeads } from '../colourways/near-beads.ts'
import { NearList } from '../colourways/near-list.tsx'
import { SwapSlots } from '../colourways/swap-slots.tsx'
import type { PlainReading } from '../reading/plain-reading.ts'
import { beadOptions, kindOptions } from './material-options.ts'
import type { Colourway, DesignDetail, Fillings, MaterialRow } from './open-design.ts'
import { type SlotBead, slotBeads } from './slot-beads.ts'
import '../colourways/colourways.css'

type ColourwaySheetProps = Readonly<{
  design: DesignDetail
  /** `undefined` adds one. */
  colourway: Colourway | undefined
  /** What a new one begins with. */
  startFrom?: Fillings
  materials: readonly MaterialRow[]
  reading: PlainReading | undefined
  format: Format
  onTry: (fillings: Fillings) => void
  onSaved: (id: string) => void
  onClose: () => void
}>

/** Which bead fills each slot, and what fills the rest; the drawing behind follows every choice. */
export function ColourwaySheet({
  design,
  colourway,
  startFrom = {},
  materials,
  reading,
  format,
  onTry,
  onSaved,
  onClose,
}: ColourwaySheetProps) {
  const [name, setName] = useState(colourway?.name ?? '')
  const [fillings, setFillings] = useState<Fillings>(colourway?.materials ?? startFrom)
  const save = useAct('colourways.save', {
    said: (_, input) => `Saved ${input.name}`,
    of: [name, fillings],
  })
  const fields = ['name', ...Object.keys(fillings).map((key) => `materials.${key}`)]
  const { at, above } = placeRefusal(save.refusal, fields)
  const { palette, extras, threadId } = design.body

  useEffect(() => onTry(fillings), [onTry, fillings])

  function choose(key: string, materialId: string | null) {
    const { [key]: _, ...rest } = fillings
    setFillings(materialId === null ? rest : { ...rest, [key]: materialId })
  }
  async function keep() {
    const saved = await save.act({
      designId: design.id,
      ...(colourway === undefined ? {} : { id: colourway.id }),
      name: name.trim(),
      materials: knownKeys(design, fillings),
    })
    if (!saved.ok) return
    onSaved(saved.value.id)
    onClose()
  }
  const picker = (key: string, label: string, options: ReturnType<typeof kindOptions>) => (
    <Picker
      key={key}
      label={label}
      error={at(`materials.${key}`)}
      value={fillings[key] ?? null}
      options={options}
      placeholder="Not chosen"
      none="Nothing of that name in stock."
      onChange={(id) => choose(key, id)}
    />
  )
  return (
    <SideSheet
      open
      title={colourway === undefined ? 'New colourway' : 'Beads of this colourway'}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" icon="check" busy={save.isBusy} onClick={() => void keep()}>
            {colourway === undefined ? 'Add the colourway' : 'Save the colourway'}
          </Button>
          <Button onClick={onClose}>Leave as it was</Button>
        </>
      }
    >
      <TextInput
        label="Name"
        error={at('name')}
        value={name}
        longest={120}
        missing="The colourway has no name yet. Late summer or Night tide would do."
        onChange={setName}
      />
      {slotBeads(palette, fillings, materials).map((bead) => (
        <div key={bead.slot.label} className="slot-choice">
          {picker(
            slotKey(bead.slot.label),
            `Slot ${bead.slot.label}, ${bead.slot.name}`,
            beadOptions(materials, bead.slot, format),
          )}
          <LikeIt
            {...{ bead, materials, reading, format }}
            unitName={design.body.unitName}
            onChoose={(id) => choose(slotKey(bead.slot.label), id)}
          />
        </div>
      ))}
      <SwapSlots palette={palette} fillings={fillings} onChange={setFillings} />
      {extras.map((extra) =>
        picker(
          extraKey(extra.id),
          `${extra.name}, ${format.count(extra.count)} a ${design.body.unitName}`,
          kindOptions(materials, extra.kind, format),
        ),
      )}
      {picker(threadKey, 'Thread', kindOptions(materials, 'thread', format, threadId))}
      {materials.length === 0 && (
        <p className="designs-quiet">
          Stock is empty. <a href={hrefTo({ room: 'stock' })}>Put in what stands in your drawers</a>
          , then choose it here.
        </p>
      )}
      {above !== undefined && <RefusalNotice refusal={above} />}
    </SideSheet>
  )
}

/** Other beads of the stock that come near the one in a slot, folded away until they are wanted. */
function LikeIt({
  bead,
  materials,
  reading,
  unitName,
  format,
  onChoose,
}: Pick<ColourwaySheetProps, 'materials' | 'reading' | 'format'> &
  Readonly<{ bead: SlotBead; unitName: string; onChoose: (materialId: string) => void }>) {
  const { label, name } = bead.slot
  return (
    <details>
      <summary>{`Beads like ${bead.material?.name ?? name}`}</summary>
      <NearList
        label={`slot ${label}`}
        beads={nearBeads(bead, materials, needOf(reading, label))}
        unitName={unitName}
        format={format}
        onChoose={onChoose}
      />
    </details>
  )
}

/** What a unit needs of a slot's bead, mg. */
function needOf(reading: PlainReading | undefined, label: string): number {
  return reading?.counts.find((slot) => slot.label === label)?.needMg.value ?? 0
}

/** Choices for keys that the design still has: a slot painted away takes its bead with it. */
function knownKeys({ body }: DesignDetail, fillings: Fillings): Record<string, string> {
  const keys = new Set([
    ...body.palette.map(({ label }) => slotKey(label)),
    ...body.extras.map(({ id }) => extraKey(id)),
    threadKey,
  ])
  return Object.fromEntries(Object.entries(fillings).filter(([key]) => keys.has(key)))
}
