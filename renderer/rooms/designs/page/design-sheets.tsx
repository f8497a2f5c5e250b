import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import { ColourwaySheet } from './colourway-sheet.tsx'
import { DetailsSheet } from './details-sheet.tsx'
import type { Colourway, DesignDetail, Fillings, MaterialRow } from './open-design.ts'
import { VersionsSheet } from './versions-sheet.tsx'
import { WorkingSheet } from './working-sheet.tsx'

/** What of a design can be opened beside it. */
export type DesignSheet = 'beads' | 'new-colourway' | 'details' | 'working' | 'versions'

type DesignSheetsProps = Readonly<{
  sheet: DesignSheet | undefined
  design: DesignDetail
  colourway: Colourway | undefined
  /** What fills the slots now: a new colourway begins with it. */
  fillings: Fillings
  materials: readonly MaterialRow[]
  reading: PlainReading | undefined
  format: Format
  /** Tells what a sheet is trying out; these stay the same functions. */
  onTryFillings: (fillings: Fillings) => void
  onTryBody: (body: DesignBody) => void
  onColourway: (id: string) => void
  onVersion: (version: number | undefined) => void
  onClose: () => void
}>

/** The sheet that is open beside a design. */
export function DesignSheets(props: DesignSheetsProps) {
  const { sheet, design, colourway, fillings, materials, reading, format, onClose } = props
  const colours = {
    ...{ design, materials, reading, format, onClose },
    onTry: props.onTryFillings,
    onSaved: props.onColourway,
  }
  switch (sheet) {
    case undefined:
      return null
    case 'beads':
      return colourway && <ColourwaySheet key={colourway.id} {...colours} colourway={colourway} />
    case 'new-colourway':
      return <ColourwaySheet key="new" {...colours} colourway={undefined} startFrom={fillings} />
    case 'details':
      return <DetailsSheet {...{ design, format, onClose }} />
    case 'working':
      return <WorkingSheet {...{ design, format, onClose }} onTry={props.onTryBody} />
    case 'versions':
      return <VersionsSheet {...{ design, format, onClose }} onVersion={props.onVersion} />
  }
}
