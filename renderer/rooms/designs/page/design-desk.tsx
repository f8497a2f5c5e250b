import { useCallback, useMemo, useState } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button, ButtonLink } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { assemble } from '../assembly/assemble.ts'
import { DRAW } from '../places.ts'
import { useReading } from '../reading/use-reading.ts'
import { useWorkshopQuestion } from '../reading/use-workshop-question.ts'
import { DesignFigures } from './design-figures.tsx'
import { type DesignSheet, DesignSheets } from './design-sheets.tsx'
import type { Colourway, DesignDetail, Fillings, MaterialRow } from './open-design.ts'
import { PictureStage } from './picture-stage.tsx'
import type { ShownStep } from './shown-step.ts'
import { slotBeads } from './slot-beads.ts'
import { StepsView } from './steps-view.tsx'
import { VersionNotice } from './versions-sheet.tsx'
import { ViewTabs } from './view-tabs.tsx'
import type { ViewName } from './views.ts'
import { WordsView } from './words-view.tsx'
import './design-page.css'

type DesignDeskProps = Readonly<{
  design: DesignDetail
  materials: readonly MaterialRow[]
  view: ViewName
  onVersion: (version: number | undefined) => void
}>

const NO_FILLINGS: Fillings = {}

/** A design on the table: drawn in the middle, its figures at the right, its sheets at hand. */
export function DesignDesk({ design, materials, view, onVersion }: DesignDeskProps) {
  const format = useFormat()
  const tables = useBeadTables()
  const [sheet, setSheet] = useState<DesignSheet>()
  const [colourwayId, setColourwayId] = useState<string>()
  // What a sheet is trying out: the picture and the figures follow it before it is saved.
  const [tried, setTried] = useState<Readonly<{ fillings?: Fillings; body?: DesignBody }>>({})
  // Stable, because the sheets tell what they try whenever these change.
  const tryFillings = useCallback((next: Fillings) => setTried({ fillings: next }), [])
  const tryBody = useCallback((next: DesignBody) => setTried({ body: next }), [])
  const colourway = chosenColourway(design, colourwayId)
  const fillings = tried.fillings ?? colourway?.materials ?? NO_FILLINGS
  const body = tried.body ?? design.body
  const answer = useReading(useWorkshopQuestion(body, fillings, design.beadsPerGram))
  const reading = answer?.ok === true ? answer.value : undefined
  const parts = reading?.parts
  const beads = useMemo(
    () => slotBeads(body.palette, fillings, materials),
    [body, fillings, materials],
  )
  // A pair is seen as a pair; the thread is told of one.
  const copies = view === 'beads' ? 'all' : 'one'
  const assembly = useMemo(
    () => assemble({ body, tables, looks: beads, copies }),
    [body, tables, beads, copies],
  )
  const [step, setStep] = useState<ShownStep>()

  function close() {
    setSheet(undefined)
    setTried({})
  }
  return (
    <Room
      fill
      title={design.name}
      back={{ href: '#/designs', label: 'Designs' }}
      actions={
        <>
          <Button kind="quiet" onClick={() => setSheet('versions')}>
            {`Version ${design.version}`}
          </Button>
          <ButtonLink href={`#/designs/${design.id}/print`}>Print and export</ButtonLink>
          <Button onClick={() => setSheet('working')}>Working</Button>
          <Button onClick={() => setSheet('details')}>Details</Button>
          <ButtonLink icon="brush" href={hrefTo({ room: 'designs', id: design.id, sub: DRAW })}>
            Draw
          </ButtonLink>
          <Button kind="primary" icon="bead" onClick={() => setSheet('beads')}>
            Choose beads
          </Button>
        </>
      }
      aside={
        <DesignFigures
          design={design}
          body={body}
          reading={reading}
          beads={beads}
          fillings={fillings}
          colourway={colourway}
          format={format}
          onColourway={setColourwayId}
          onAddColourway={() => setSheet('new-colourway')}
          onChooseBeads={() => setSheet('beads')}
        />
      }
    >
      <VersionNotice design={design} onVersion={onVersion} />
      {answer?.ok === false && <RefusalNotice refusal={answer.error} />}
      <ViewTabs id={design.id} view={view} />
      {view === 'words' && <WordsView name={design.name} body={body} parts={parts} beads={beads} />}
      {view === 'steps' && <StepsView id={design.id} body={body} parts={parts} onStep={setStep} />}
      {view !== 'words' && view !== 'steps' && (
        <PictureStage
          view={view}
          name={design.name}
          body={body}
          reading={reading}
          assembly={assembly}
          beads={beads}
          step={step}
          format={format}
        />
      )}
      <DesignSheets
        {...{ sheet, design, colourway, fillings, materials, reading, format, onVersion }}
        onTryFillings={tryFillings}
        onTryBody={tryBody}
        onColourway={setColourwayId}
        onClose={close}
      />
    </Room>
  )
}

function chosenColourway(design: DesignDetail, id: string | undefined): Colourway | undefined {
  return design.colourways.find((one) => one.id === id) ?? design.colourways[0]
}
