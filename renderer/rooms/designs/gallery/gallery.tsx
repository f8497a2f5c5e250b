import { type RefObject, useDeferredValue, useMemo, useRef, useState } from 'react'
import type { Format } from '../../../app/format.ts'
import { go, hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { useAct } from '../../../app/use-act.ts'
import { useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { ButtonLink } from '../../../ui/button.tsx'
import { EmptyState } from '../../../ui/empty-state.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { BRING_IN, NEW } from '../places.ts'
import { arrangeDesigns, type Order, orderOptions, tagsOf } from './arrange-designs.ts'
import { DesignCard, pictureHeight } from './design-card.tsx'
import type { DesignRow } from './design-row.ts'
import { cardColumns, cardWidth, GAP_PX, useGridWidth } from './use-card-width.ts'
import { useCardWindow } from './use-card-window.ts'
import { useDuplicate } from './use-duplicate.ts'
import './gallery.css'

const EVERY_TAG = ''

/** All designs on the wall. */
export function Gallery() {
  const format = useFormat()
  const [search, setSearch] = useState('')
  const [tag, setTag] = useState(EVERY_TAG)
  const [order, setOrder] = useState<Order>('name')
  const [shelf, setShelf] = useState<'kept' | 'away'>('kept')
  const wanted = useDeferredValue(search.trim())
  const archived = shelf === 'away'
  const { value, refusal } = useCall('designs.list', { archived })
  const designs = value?.designs
  const isEmpty = designs?.length === 0 && !archived
  const tags = useMemo(() => tagsOf(designs ?? []), [designs])
  const chosen = tags.includes(tag) ? tag : null
  const arranged = useMemo(
    () => arrangeDesigns(designs ?? [], { order, tag: chosen, wanted }),
    [designs, order, chosen, wanted],
  )
  return (
    <Room title="Designs" actions={<WaysIn />}>
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {!isEmpty && (
        <div className="gallery-filter">
          <TextInput
            label="Find a design"
            labelHidden
            type="search"
            placeholder="Name or tag"
            value={search}
            onChange={setSearch}
          />
          <Select
            label="Tag"
            labelHidden
            value={chosen ?? EVERY_TAG}
            options={[
              { value: EVERY_TAG, label: 'Every tag' },
              ...tags.map((one) => ({ value: one, label: one })),
            ]}
            onChange={setTag}
          />
          <Select
            label="Order"
            labelHidden
            value={order}
            options={orderOptions}
            onChange={setOrder}
          />
          <SegmentedChoice
            label="Which designs"
            labelHidden
            value={shelf}
            options={[
              { value: 'kept', label: 'In use' },
              { value: 'away', label: 'Put away' },
            ]}
            onChange={setShelf}
          />
        </div>
      )}
      {isEmpty && <NoDesigns />}
      {designs !== undefined && !isEmpty && (
        <Wall designs={arranged} format={format} none={noneWords(designs.length)} />
      )}
    </Room>
  )
}

function noneWords(designs: number): string {
  return designs === 0 ? 'Nothing is put away.' : 'No design answers to that.'
}

function WaysIn() {
  return (
    <>
      <ButtonLink icon="file" href={hrefTo({ room: 'designs', id: BRING_IN })}>
        Bring in a chart
      </ButtonLink>
      <ButtonLink kind="primary" icon="add" href={hrefTo({ room: 'designs', id: NEW })}>
        New design
      </ButtonLink>
    </>
  )
}

function NoDesigns() {
  return (
    <EmptyState
      picture="strand"
      action={
        <div className="designs-buttons">
          <ButtonLink kind="primary" icon="file" href={hrefTo({ room: 'designs', id: BRING_IN })}>
            Bring in a chart
          </ButtonLink>
          <ButtonLink href={hrefTo({ room: 'designs', id: NEW })}>Begin with a shape</ButtonLink>
        </div>
      }
    >
      A design is a chart and the beads that fill it. From it follow the counts, the thread, the
      hours and the price of everything you make.
    </EmptyState>
  )
}

function Wall({
  designs,
  format,
  none,
}: Readonly<{ designs: readonly DesignRow[]; format: Format; none: string }>) {
  const grid = useRef<HTMLUListElement>(null)
  const { widthPx, rowPx, shown } = useWall(grid, designs.length)
  const duplicate = useDuplicate(designs.map(({ name }) => name))
  const archive = useAct('designs.archive', {
    said: (_, { archived }) => (archived ? 'Put away' : 'Brought back'),
  })
  async function copy(id: string) {
    const made = await duplicate(id)
    if (made !== undefined) go({ room: 'designs', id: made })
  }
  return (
    <>
      <p className="designs-quiet" role="status">
        {designs.length === 0 ? none : format.counted(designs.length, 'design')}
      </p>
      <ul
        className="gallery-wall"
        ref={grid}
        style={{
          gridAutoRows: rowPx,
          paddingBlock: `${shown.abovePx}px ${shown.belowPx}px`,
        }}
      >
        {designs.slice(shown.from, shown.to).map((design, at) => (
          <DesignCard
            key={design.id}
            design={design}
            number={shown.from + at + 1}
            of={designs.length}
            widthPx={widthPx}
            format={format}
            onDuplicate={() => void copy(design.id)}
            onArchive={() => void archive.act({ id: design.id, archived: !design.archived })}
          />
        ))}
      </ul>
    </>
  )
}

/** Of a card, below its picture: two lines of name, three of figures, two of tags. */
const TEXT_REM = 12.5

/** How large the cards are, and which of them are on the page. */
function useWall(grid: RefObject<HTMLElement | null>, count: number) {
  const gridPx = useGridWidth(grid)
  const widthPx = cardWidth(gridPx)
  const rowPx = pictureHeight(widthPx) + Math.round(TEXT_REM * remPx())
  const stepPx = rowPx + GAP_PX
  const shown = useCardWindow(grid, { count, columns: cardColumns(gridPx), stepPx })
  return { widthPx, rowPx, shown }
}

function remPx(): number {
  return Number.parseFloat(getComputedStyle(document.documentElement).fontSize)
}
