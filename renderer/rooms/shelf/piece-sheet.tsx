import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import type { Piece } from './shelf-room.tsx'

type How = 'returned' | 'given' | 'lost'

/** One piece: what it cost and earned, where it was, and what can become of it. */
export function PieceSheet({
  pieceId,
  onSell,
  onClose,
}: Readonly<{ pieceId: string; onSell: (piece: Piece) => void; onClose: () => void }>) {
  const format = useFormat()
  const { value, refusal } = useCall('pieces.read', { id: pieceId })
  const places = useCall('workshop.read', {}).value?.places ?? []
  const end = useAct('pieces.end', { said: () => `Changed ${value?.piece.code ?? 'the piece'}` })
  const become = (how: How) =>
    void end.act({
      pieceId,
      how,
      placeId: how === 'returned' ? (places[0]?.id ?? null) : null,
      note: '',
    })
  const piece = value?.piece
  return (
    <SideSheet
      open
      title={piece?.code ?? 'Piece'}
      onClose={onClose}
      actions={
        piece !== undefined && (
          <Acts piece={piece} isBusy={end.isBusy} onSell={onSell} onBecome={become} />
        )
      }
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {end.refusal !== undefined && <RefusalNotice refusal={end.refusal} />}
      {piece !== undefined && (
        <>
          <p className="shelf-what">
            {piece.designName}, {piece.colourwayName}
          </p>
          <FigureList figures={figures(piece, format)} />
          <h3>What happened to it</h3>
          <ol className="shelf-history">
            {value?.movements.map(({ id, label }) => (
              <li key={id}>{label}</li>
            ))}
          </ol>
        </>
      )}
    </SideSheet>
  )
}

function figures(piece: Piece, format: ReturnType<typeof useFormat>) {
  const { sale, costMinor, askingMinor, placeName } = piece
  if (sale === null) {
    return [
      {
        label: 'Asked for it',
        value: askingMinor === null ? 'no price here' : format.money(askingMinor),
      },
      { label: 'It cost', value: format.money(costMinor) },
      { label: 'Where', value: placeName || 'nowhere' },
    ]
  }
  return [
    { label: 'Earned', value: format.money(sale.profitMinor) },
    { label: 'Price', value: format.money(sale.priceMinor) },
    { label: 'Tax', value: format.money(sale.taxMinor) },
    { label: 'Fees', value: format.money(sale.feesMinor) },
    { label: 'It cost', value: format.money(costMinor) },
  ]
}

function Acts({
  piece,
  isBusy,
  onSell,
  onBecome,
}: Readonly<{
  piece: Piece
  isBusy: boolean
  onSell: (piece: Piece) => void
  onBecome: (how: How) => void
}>) {
  if (piece.state === 'sold') {
    return (
      <Button icon="back" busy={isBusy} onClick={() => onBecome('returned')}>
        It came back
      </Button>
    )
  }
  if (piece.state !== 'here' && piece.state !== 'reserved') return null
  return (
    <>
      <Button kind="primary" onClick={() => onSell(piece)}>
        Sell
      </Button>
      <Button busy={isBusy} onClick={() => onBecome('given')}>
        Given away
      </Button>
      <Button kind="quiet" busy={isBusy} onClick={() => onBecome('lost')}>
        Lost
      </Button>
    </>
  )
}
