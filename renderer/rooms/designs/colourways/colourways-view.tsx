import { useRef, useState } from 'react'
import { Room } from '../../../app/room.tsx'
import { useAct } from '../../../app/use-act.ts'
import { useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { copyName } from '../gallery/copy-name.ts'
import { useCardWidth } from '../gallery/use-card-width.ts'
import { ColourwaySheet } from '../page/colourway-sheet.tsx'
import type { DesignDetail, Fillings, MaterialRow } from '../page/open-design.ts'
import { ViewTabs } from '../page/view-tabs.tsx'
import { useReading } from '../reading/use-reading.ts'
import { useWorkshopQuestion } from '../reading/use-workshop-question.ts'
import { ColourwayCard } from './colourway-card.tsx'
import { ColourwayComparison } from './colourway-comparison.tsx'
import type { Standing } from './standing.ts'
import './colourways.css'

const UP = { href: '#/designs', label: 'Designs' } as const
const NO_MATERIALS: readonly MaterialRow[] = []

/** All colourways of a design side by side, drawn, priced and held against the stock. */
export function ColourwaysView({ id }: Readonly<{ id: string }>) {
  const design = useCall('designs.read', { id })
  const standings = useCall('colourways.list', { designId: id })
  const materials = useCall('materials.list', {})
  const refusal = design.refusal ?? standings.refusal
  if (design.value === undefined || standings.value === undefined) {
    return (
      <Room title={design.value?.name ?? 'Design'} back={UP}>
        <ViewTabs id={id} view="colourways" />
        {refusal === undefined ? (
          <p role="status">Reading the colourways…</p>
        ) : (
          <RefusalNotice refusal={refusal} />
        )}
      </Room>
    )
  }
  return (
    <ColourwaysDesk
      design={design.value}
      standings={standings.value.colourways}
      materials={materials.value?.materials ?? NO_MATERIALS}
    />
  )
}

type ColourwaysDeskProps = Readonly<{
  design: DesignDetail
  standings: readonly Standing[]
  materials: readonly MaterialRow[]
}>

function ColourwaysDesk({ design, standings, materials }: ColourwaysDeskProps) {
  const format = useFormat()
  const [open, setOpen] = useState<string>()
  const [tried, setTried] = useState<Fillings>()
  const [isComparing, setComparing] = useState(false)
  const copy = useAct('colourways.save', { said: (_, { name }) => `Added ${name}` })
  const remove = useAct('colourways.remove', { said: () => 'Removed the colourway' })
  const grid = useRef<HTMLUListElement>(null)
  const widthPx = useCardWidth(grid)
  const reading = useDesignReading(design)
  const names = standings.map(({ name }) => name)
  const colourway = design.colourways.find(({ id }) => id === open)
  const refusal = copy.refusal ?? remove.refusal
  function close() {
    setOpen(undefined)
    setTried(undefined)
  }
  return (
    <Room
      title={design.name}
      back={UP}
      actions={
        <>
          {standings.length > 1 && (
            <Button onClick={() => setComparing(!isComparing)}>
              {isComparing ? 'Show all' : 'Compare two'}
            </Button>
          )}
          <Button kind="primary" icon="add" onClick={() => setOpen(NEW)}>
            Add a colourway
          </Button>
        </>
      }
    >
      <ViewTabs id={design.id} view="colourways" />
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {isComparing && standings.length > 1 ? (
        <ColourwayComparison
          design={design}
          standings={standings}
          materials={materials}
          reading={reading}
          format={format}
        />
      ) : (
        <ul className="colourway-wall" ref={grid}>
          {standings.map((standing) => (
            <ColourwayCard
              key={standing.id}
              design={design}
              standing={standing}
              tried={open === standing.id ? tried : undefined}
              materials={materials}
              widthPx={widthPx}
              format={format}
              isOnly={standings.length === 1}
              onBeads={() => setOpen(standing.id)}
              onCopy={() =>
                void copy.act({
                  designId: design.id,
                  name: copyName(standing.name, names),
                  materials: standing.materials,
                })
              }
              onRemove={() => void remove.act({ designId: design.id, id: standing.id })}
            />
          ))}
        </ul>
      )}
      {open !== undefined && (
        <ColourwaySheet
          key={open}
          design={design}
          colourway={colourway}
          startFrom={standings[0]?.materials ?? {}}
          materials={materials}
          reading={reading}
          format={format}
          onTry={setTried}
          onSaved={() => undefined}
          onClose={close}
        />
      )}
    </Room>
  )
}

/** Stands for a colourway that is being added. */
const NEW = 'new'

function useDesignReading({ body, colourways, beadsPerGram }: DesignDetail) {
  const answer = useReading(useWorkshopQuestion(body, colourways[0]?.materials, beadsPerGram))
  return answer?.ok === true ? answer.value : undefined
}
