import { useDeferredValue, useRef, useState } from 'react'
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
import { DesignCard } from './design-card.tsx'
import type { DesignRow } from './design-row.ts'
import { useCardWidth } from './use-card-width.ts'
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
  const { value, refusal } = useCall('designs.list', {
    archived,
    ...(wanted === '' ? {} : { search: wanted }),
  })
  const designs = value?.designs
  const isEmpty = designs?.length === 0 && wanted === '' && !archived
  const tags = tagsOf(designs ?? [])
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
            value={tags.includes(tag) ? tag : EVERY_TAG}
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
        <Wall
          designs={arrangeDesigns(designs, { order, tag: tags.includes(tag) ? tag : null })}
          format={format}
          none={archived ? 'Nothing is put away.' : 'No design answers to that.'}
        />
      )}
    </Room>
  )
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
  const widthPx = useCardWidth(grid)
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
      <ul className="gallery-wall" ref={grid}>
        {designs.map((design) => (
          <DesignCard
            key={design.id}
            design={design}
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
