import type { Format } from '../../app/format.ts'
import { Badge, type BadgeTone } from '../../ui/badge.tsx'
import { Button } from '../../ui/button.tsx'
import { Table } from '../../ui/table.tsx'
import type { Column } from '../../ui/table-column.ts'
import type { Piece } from './shelf-room.tsx'

const stateWords: Readonly<Record<Piece['state'], readonly [BadgeTone, string]>> = {
  here: ['good', 'Here'],
  reserved: ['busy', 'For an order'],
  sold: ['quiet', 'Sold'],
  given: ['quiet', 'Given'],
  lost: ['bad', 'Lost'],
  unmade: ['quiet', 'Unmade'],
}

/** Pieces in rows, each with a box to choose it for tags and moves. */
export function PieceTable({
  pieces,
  format,
  chosen,
  onChosen,
  onOpen,
  onSell,
}: Readonly<{
  pieces: readonly Piece[]
  format: Format
  chosen: ReadonlySet<string>
  onChosen: (chosen: ReadonlySet<string>) => void
  onOpen: (piece: Piece) => void
  onSell: (piece: Piece) => void
}>) {
  const areAll = pieces.length > 0 && pieces.every(({ id }) => chosen.has(id))
  function toggle(id: string) {
    const next = new Set(chosen)
    if (!next.delete(id)) next.add(id)
    onChosen(next)
  }
  return (
    <>
      <label className="shelf-all">
        <input
          type="checkbox"
          checked={areAll}
          disabled={pieces.length === 0}
          onChange={() => onChosen(areAll ? new Set() : new Set(pieces.map(({ id }) => id)))}
        />
        Choose all {format.count(pieces.length)}
      </label>
      <Table
        caption="Pieces"
        rows={pieces}
        rowKey={({ id }) => id}
        onOpen={onOpen}
        columns={columns(format, pieces)}
        actions={(piece) => (
          <span className="shelf-actions">
            <input
              type="checkbox"
              aria-label={`Choose ${piece.code}`}
              checked={chosen.has(piece.id)}
              onChange={() => toggle(piece.id)}
            />
            {(piece.state === 'here' || piece.state === 'reserved') && (
              <Button small onClick={() => onSell(piece)} aria-label={`Sell ${piece.code}`}>
                Sell
              </Button>
            )}
          </span>
        )}
        empty={<p className="quiet">No piece answers to that.</p>}
      />
    </>
  )
}

function columns(format: Format, pieces: readonly Piece[]): readonly Column<Piece>[] {
  const earned: Column<Piece> = {
    key: 'profit',
    head: 'Earned',
    align: 'end',
    cell: ({ sale }) => (sale === null ? '' : format.money(sale.profitMinor)),
  }
  return [
    {
      key: 'code',
      head: 'Piece',
      sortBy: ({ code }) => code,
      cell: ({ code }) => <span className="shelf-code">{code}</span>,
    },
    {
      key: 'design',
      head: 'Design',
      width: '14rem',
      sortBy: ({ designName }) => designName,
      cell: ({ designName, colourwayName }) => (
        <>
          {designName}
          <span className="shelf-colourway">{colourwayName}</span>
        </>
      ),
    },
    {
      key: 'made',
      head: 'Made',
      sortBy: ({ madeOn }) => madeOn,
      cell: ({ madeOn }) => <span className="nowrap">{format.date(madeOn)}</span>,
    },
    {
      key: 'place',
      head: 'Where',
      sortBy: ({ placeName }) => placeName,
      cell: ({ placeName, sale }) => sale?.channelName ?? placeName,
    },
    { key: 'cost', head: 'Cost', align: 'end', cell: ({ costMinor }) => format.money(costMinor) },
    {
      key: 'price',
      head: 'Price',
      align: 'end',
      cell: ({ sale, askingMinor }) => {
        const price = sale?.priceMinor ?? askingMinor
        return price === null ? '' : format.money(price)
      },
    },
    // Nothing is earned before it is sold.
    ...(pieces.some(({ sale }) => sale !== null) ? [earned] : []),
    {
      key: 'state',
      head: 'State',
      sortBy: ({ state }) => state,
      cell: ({ state, orderCode }) => {
        const [tone, words] = stateWords[state]
        return (
          <Badge tone={tone}>
            {orderCode !== null && state === 'reserved' ? `For ${orderCode}` : words}
          </Badge>
        )
      },
    },
  ]
}
