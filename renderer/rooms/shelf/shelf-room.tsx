import { useDeferredValue, useState } from 'react'
import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import { usePlace } from '../../app/place.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button, ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import { MoveSheet } from './move-sheet.tsx'
import { PieceSheet } from './piece-sheet.tsx'
import { PieceTable } from './piece-table.tsx'
import { SellSheet } from './sell-sheet.tsx'
import { TagsSheet } from './tags-sheet.tsx'
import { Takings } from './takings.tsx'
import './shelf.css'

export type Piece = CallOutput<'pieces.list'>['pieces'][number]
type Shown = 'here' | 'sold' | 'all'
type Open = Readonly<{ kind: 'sell' | 'piece'; piece: Piece }> | 'tags' | 'move' | undefined

/** The Shelf: finished pieces, where each is, its tag, what it earned. */
export function ShelfRoom() {
  const format = useFormat()
  const { id } = usePlace()
  const [shown, setShown] = useState<Shown>('here')
  const [search, setSearch] = useState('')
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set())
  const [open, setOpen] = useState<Open>()
  const deferred = useDeferredValue(search.trim())
  const all = useCall('pieces.list', { state: 'all' })
  const list = useCall('pieces.list', {
    state: shown,
    ...(deferred === '' ? {} : { search: deferred }),
  })
  const pieces = list.value?.pieces ?? []
  const picked = pieces.filter((piece) => chosen.has(piece.id))
  const close = () => setOpen(undefined)
  const linked = all.value?.pieces.find((piece) => piece.id === id)
  const opened =
    open ?? (linked === undefined ? undefined : { kind: 'piece' as const, piece: linked })
  return (
    <Room
      title="Shelf"
      actions={
        all.value?.pieces.length !== 0 && (
          <ShelfActs picked={picked.length} format={format} onOpen={setOpen} />
        )
      }
    >
      {list.refusal !== undefined && <RefusalNotice refusal={list.refusal} />}
      {all.value?.pieces.length === 0 ? (
        <EmptyShelf />
      ) : (
        <>
          <ShelfFigures pieces={all.value?.pieces} format={format} />
          <ShelfFilter shown={shown} onShown={setShown} search={search} onSearch={setSearch} />
          <PieceTable
            pieces={pieces}
            format={format}
            chosen={chosen}
            onChosen={setChosen}
            onOpen={(piece) => setOpen({ kind: 'piece', piece })}
            onSell={(piece) => setOpen({ kind: 'sell', piece })}
          />
          <Takings />
        </>
      )}
      {opened === 'tags' && <TagsSheet pieces={picked} onClose={close} />}
      {opened === 'move' && <MoveSheet pieces={picked} onClose={close} />}
      {typeof opened === 'object' && opened.kind === 'sell' && (
        <SellSheet piece={opened.piece} onClose={close} />
      )}
      {typeof opened === 'object' && opened.kind === 'piece' && (
        <PieceSheet
          pieceId={opened.piece.id}
          onSell={(piece) => setOpen({ kind: 'sell', piece })}
          onClose={() => {
            close()
            if (id !== undefined) location.hash = '#/shelf'
          }}
        />
      )}
    </Room>
  )
}

type ShelfActsProps = Readonly<{
  picked: number
  format: Format
  onOpen: (open: 'tags' | 'move') => void
}>

function ShelfActs({ picked, format, onOpen }: ShelfActsProps) {
  return (
    <>
      <Button icon="forward" disabled={picked === 0} onClick={() => onOpen('move')}>
        Move
      </Button>
      <Button kind="primary" icon="tag" disabled={picked === 0} onClick={() => onOpen('tags')}>
        {picked === 0 ? 'Print tags' : `Print ${format.counted(picked, 'tag')}`}
      </Button>
    </>
  )
}

type ShelfFilterProps = Readonly<{
  shown: Shown
  onShown: (shown: Shown) => void
  search: string
  onSearch: (search: string) => void
}>

function ShelfFilter({ shown, onShown, search, onSearch }: ShelfFilterProps) {
  return (
    <div className="shelf-filter">
      <SegmentedChoice
        label="Which pieces"
        labelHidden
        value={shown}
        options={[
          { value: 'here', label: 'On the shelf' },
          { value: 'sold', label: 'Sold' },
          { value: 'all', label: 'All' },
        ]}
        onChange={onShown}
      />
      <TextInput
        label="Find a piece"
        labelHidden
        type="search"
        placeholder="Code, design or place"
        value={search}
        onChange={onSearch}
      />
    </div>
  )
}

function EmptyShelf() {
  return (
    <EmptyState
      picture="shelf"
      action={
        <ButtonLink kind="primary" href="#/bench">
          Go to the Bench
        </ButtonLink>
      }
    >
      Pieces appear here with a code when you log a make at the Bench. Then they get tags, a place,
      and one day a sale.
    </EmptyState>
  )
}

function ShelfFigures({
  pieces,
  format,
}: Readonly<{ pieces: readonly Piece[] | undefined; format: Format }>) {
  const here = pieces?.filter(({ state }) => state === 'here' || state === 'reserved')
  const asking = here?.reduce((sum, { askingMinor }) => sum + (askingMinor ?? 0), 0)
  const cost = here?.reduce((sum, { costMinor }) => sum + costMinor, 0)
  return (
    <FigureList
      row
      figures={[
        { label: 'Pieces here', value: here && format.count(here.length) },
        { label: 'Asked for them', value: asking === undefined ? undefined : format.money(asking) },
        { label: 'They cost', value: cost === undefined ? undefined : format.money(cost) },
      ]}
    />
  )
}
