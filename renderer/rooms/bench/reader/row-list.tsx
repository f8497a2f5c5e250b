import { useEffect, useMemo, useRef, useState } from 'react'
import {
  type PlacedLine,
  placeOf,
  type ReaderMap,
} from '../../../../shared-core/bench/reader-place.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { capital } from '../../../app/capital.ts'
import { Button } from '../../../ui/button.tsx'
import { Field } from '../../../ui/field.tsx'
import { Select } from '../../../ui/select.tsx'
import { Table } from '../../../ui/table.tsx'
import { lineName, lineSlots, pieceName, type Telling, tellBare, tellBeads } from './tell-line.ts'

type RowListProps = Readonly<{
  map: ReaderMap
  at: number
  body: DesignBody
  tell: Telling
  onJump: (at: number) => void
}>

/** All rows of a piece, to go to one by its number or from the list. */
export function RowList({ map, at, body, tell, onJump }: RowListProps) {
  const here = placeOf(map, Math.min(at, map.steps - 1))
  const [copy, setCopy] = useState<number>()
  const [text, setText] = useState('')
  const chosen = copy ?? here.copy
  const unitFrom = Math.floor(chosen / map.piecesInUnit) * map.stepsInUnit
  const lines = useMemo(() => linesOf(map, chosen), [map, chosen])
  const wanted = Number(text)
  const found = lines.find(({ line }) => line.rows.includes(wanted))
  const isUnknown = text.trim() !== '' && found === undefined
  const jump = (placed: PlacedLine) => onJump(unitFrom + placed.from)
  const list = useRef<HTMLDivElement>(null)
  const openKey = String(lines.findLast(({ from }) => unitFrom + from <= at)?.from)
  // The row in hand is in sight, wherever the list was.
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked for anew whenever another row is in hand
  useEffect(() => {
    list.current?.querySelector('[data-open]')?.scrollIntoView({ block: 'center' })
  }, [openKey])
  return (
    <div className="reader-rows" ref={list}>
      <Select
        label="Piece"
        value={String(chosen)}
        options={pieces(map, body.unitName)}
        onChange={(value) => setCopy(Number(value))}
      />
      <form
        className="reader-goto"
        onSubmit={(event) => {
          event.preventDefault()
          if (found !== undefined) jump(found)
        }}
      >
        <Field
          label="Row number"
          error={isUnknown ? 'No row of this piece has that number.' : undefined}
          missing={text.trim() === '' ? 'Type the number of a row.' : undefined}
        >
          {(control) => (
            <input
              {...control}
              className="input"
              inputMode="numeric"
              value={text}
              onChange={(event) => setText(event.target.value)}
            />
          )}
        </Field>
        <Button type="submit" keeps>
          Go to row
        </Button>
      </form>
      <Table
        caption="Rows in the order of work"
        rows={lines}
        rowKey={({ from }) => String(from)}
        openKey={openKey}
        onOpen={jump}
        columns={[
          { key: 'name', head: 'Row', width: '8rem', cell: (placed) => lineName(placed) },
          {
            key: 'beads',
            head: 'Beads',
            cell: (placed) =>
              placed.line.steps.some(({ beads }) => beads.length > 0)
                ? tellBeads(lineSlots(placed.line), tell)
                : tellBare(placed, tell),
          },
        ]}
      />
    </div>
  )
}

function linesOf(map: ReaderMap, copy: number): readonly PlacedLine[] {
  const part = map.starts.filter(({ piece }) => piece === copy % map.piecesInUnit)
  const from = part[0]?.from ?? 0
  const after = map.starts.find(({ piece }) => piece > copy % map.piecesInUnit)
  const to = after?.from ?? map.stepsInUnit
  return map.lines.filter((placed) => placed.from >= from && placed.from < to)
}

function pieces(map: ReaderMap, unitName: string) {
  return Array.from({ length: map.units * map.piecesInUnit }, (_, copy) => {
    const unit = Math.floor(copy / map.piecesInUnit)
    const [first] = linesOf(map, copy)
    const name = first === undefined ? '' : pieceName(first.piece)
    const label = `${capital(unitName)} ${unit + 1}: ${name}`
    return { value: String(copy), label }
  })
}
