import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Badge } from '../../../ui/badge.tsx'
import { BasisMark } from '../../../ui/basis-mark.tsx'
import { Table } from '../../../ui/table.tsx'
import type { Column } from '../../../ui/table-column.ts'
import { ScaleBead } from './scale-bead.tsx'
import { SpreadCell } from './spread-cell.tsx'
import { type FormEntry, originWords, restsOn } from './table-words.ts'
import { UsesCell } from './uses-cell.tsx'

/** Every bead form at one scale, with its figures and what they rest on. */
export function FormTable({
  forms,
  openId,
  onOpen,
}: Readonly<{
  forms: readonly FormEntry[]
  openId: string | undefined
  onOpen: (form: FormEntry) => void
}>) {
  const { decimal } = useFormat()
  return (
    <Table
      caption="Bead forms"
      rows={forms}
      rowKey={({ id }) => id}
      openKey={openId}
      onOpen={onOpen}
      columns={columns(decimal)}
    />
  )
}

function columns(decimal: DecimalMark): readonly Column<FormEntry>[] {
  const spread = (
    key: 'diameterMm' | 'lengthMm' | 'holeMm' | 'beadsPerGram',
    head: string,
  ): Column<FormEntry> => ({
    key,
    head,
    align: 'end',
    cell: (form) => <SpreadCell spread={form[key]} decimal={decimal} />,
    sortBy: (form) => form[key].value,
  })
  return [
    {
      key: 'name',
      head: 'Bead form',
      cell: (form) => <FormName form={form} />,
      sortBy: ({ name }) => name,
    },
    spread('diameterMm', 'Across the hole, mm'),
    spread('lengthMm', 'Along it, mm'),
    spread('holeMm', 'Hole, mm'),
    spread('beadsPerGram', 'Beads a gram'),
    {
      key: 'basis',
      head: 'Rests on',
      cell: (form) => (
        <span className="tables-basis">
          <BasisMark basis={form.diameterMm.basis} /> {restsOn(form)}
        </span>
      ),
      sortBy: restsOn,
    },
    {
      key: 'uses',
      head: 'In use',
      cell: ({ uses }) => <UsesCell uses={uses} />,
      sortBy: ({ uses }) => -uses.materials - uses.designs,
    },
  ]
}

function FormName({ form }: Readonly<{ form: FormEntry }>) {
  const origin = originWords(form.origin)
  return (
    <span className="tables-name">
      <span className="tables-bead">
        <ScaleBead
          family={form.family}
          diameterMm={form.diameterMm.value}
          lengthMm={form.lengthMm.value}
        />
      </span>
      <span>
        {form.name}
        {origin !== undefined && <Badge tone="busy">{origin}</Badge>}
      </span>
    </span>
  )
}
