import type { DesignBody, PaletteSlot } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { Badge } from '../../../ui/badge.tsx'
import { BasisMark } from '../../../ui/basis-mark.tsx'
import { Swatch } from '../../../ui/swatch.tsx'
import { Table } from '../../../ui/table.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import type { SlotNaming } from '../draft/use-slot-names.ts'
import type { MaterialRow } from '../page/open-design.ts'
import type { PlainReading } from '../reading/plain-reading.ts'

/** Beads by slot: counted, and weighed as the tables or this workshop's scale have it. */
export function SlotCounts({
  reading,
  palette,
  format,
  inStock,
  naming,
}: Readonly<{
  reading: PlainReading | undefined
  palette: DesignBody['palette']
  format: Format
  /** Beads of stock by slot letter; adds what is free of each. */
  inStock?: ReadonlyMap<string, MaterialRow> | undefined
  /** The slots' names as they are being typed; without it they are only told. */
  naming?: SlotNaming | undefined
}>) {
  return (
    <Table
      caption="Beads by slot"
      rows={reading?.counts ?? []}
      rowKey={({ label }) => label}
      columns={[
        {
          key: 'slot',
          head: 'Slot',
          cell: ({ label }) => {
            const slot = palette.find((one) => one.label === label)
            const look = slot === undefined ? null : { hex: slot.colourHex, finish: slot.finish }
            return (
              <span className="slot-name">
                <span className="slot-letter">{label}</span>
                {slot === undefined || naming === undefined ? (
                  <Swatch look={look} name={slot?.name ?? 'not in the palette'} />
                ) : (
                  <NamedSlot slot={slot} naming={naming} />
                )}
              </span>
            )
          },
        },
        {
          key: 'count',
          head: 'Beads',
          align: 'end',
          cell: ({ count }) => format.count(count),
        },
        {
          key: 'mass',
          head: 'In the work',
          align: 'end',
          cell: ({ massMg }) => (
            <span className="slot-mass">
              {format.mass(massMg.value)} <BasisMark basis={massMg.basis} />
            </span>
          ),
        },
        {
          key: 'need',
          head: 'To have at hand',
          align: 'end',
          cell: ({ needMg }) => format.mass(needMg.value),
        },
        ...(inStock === undefined
          ? []
          : [
              {
                key: 'stock',
                head: 'Free in stock',
                cell: (one: SlotCount) => (
                  <FreeInStock one={one} bead={inStock.get(one.label)} format={format} />
                ),
              },
            ]),
      ]}
    />
  )
}

function NamedSlot({ slot, naming }: Readonly<{ slot: PaletteSlot; naming: SlotNaming }>) {
  return (
    <>
      <Swatch look={{ hex: slot.colourHex, finish: slot.finish }} />
      <TextInput
        label={`Name of slot ${slot.label}`}
        labelHidden
        longest={120}
        placeholder={slot.name}
        value={naming.typed(slot) ?? slot.name}
        onChange={(name) => naming.onName(slot, name)}
      />
    </>
  )
}

type SlotCount = PlainReading['counts'][number]

/** What is free of the bead in a slot, and whether one unit can be made of it. */
function FreeInStock({
  one,
  bead,
  format,
}: Readonly<{ one: SlotCount; bead: MaterialRow | undefined; format: Format }>) {
  if (bead === undefined) return <span className="designs-quiet">Not chosen</span>
  const need = bead.unit === 'mg' ? one.needMg.value : one.count
  const isEnough = bead.available >= need
  return (
    <Badge tone={isEnough ? 'good' : 'attention'}>
      {`${format.quantity(bead.available, bead.unit)}, ${isEnough ? 'enough' : 'too little'}`}
    </Badge>
  )
}
