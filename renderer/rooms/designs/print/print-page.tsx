import { useMemo, useState } from 'react'
import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { useCall } from '../../../app/use-call.ts'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { PrintDesk } from './print-desk.tsx'
import type { SheetChoice } from './sheet-wish.ts'

/** A design on its way out: the pattern sheet, looked at page by page, and other files. */
export function PrintPage({ id }: Readonly<{ id: string }>) {
  const [chosen, setChosen] = useState<Partial<SheetChoice>>({})
  const { value: design, refusal } = useCall('designs.read', {
    id,
    ...(chosen.version === undefined ? {} : { version: chosen.version }),
  })
  const materials = useCall('materials.list', {}).value?.materials
  const choice = useMemo((): SheetChoice | undefined => {
    const first = design?.colourways[0]
    if (design === undefined || first === undefined) return undefined
    return {
      audience: 'self',
      paper: 'a4',
      version: design.version,
      terms: '',
      ...chosen,
      colourwayId: design.colourways.find((one) => one.id === chosen.colourwayId)?.id ?? first.id,
    }
  }, [design, chosen])
  if (design === undefined || choice === undefined) {
    return (
      <Room
        title="Print and export"
        back={{ href: hrefTo({ room: 'designs', id }), label: 'Design' }}
      >
        {refusal === undefined ? (
          <p role="status">Reading the design…</p>
        ) : (
          <RefusalNotice refusal={refusal} />
        )}
      </Room>
    )
  }
  return (
    <PrintDesk design={design} materials={materials ?? []} choice={choice} onChoice={setChosen} />
  )
}
