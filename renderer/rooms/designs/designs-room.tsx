import { usePlace } from '../../app/place.ts'
import { GridPage } from './bring-in/grid-page.tsx'
import { ColourwaysView } from './colourways/colourways-view.tsx'
import { Gallery } from './gallery/gallery.tsx'
import { NewDesign } from './new/new-design.tsx'
import { DesignPage } from './page/design-page.tsx'
import { planOf, viewOf } from './page/views.ts'
import { PartsView } from './parts/parts-view.tsx'
import { BRING_IN, DRAW, NEW, PRINT } from './places.ts'
import { PrintPage } from './print/print-page.tsx'
import { DrawingTable } from './table/drawing-table.tsx'
import { VersionsView } from './versions/versions-view.tsx'
import './designs.css'

/** Designs: the gallery, the ways in for new charts, or one design. */
export function DesignsRoom() {
  const { id, sub } = usePlace()
  if (id === undefined) return <Gallery />
  if (id === NEW) return <NewDesign />
  if (id === BRING_IN || id === 'import') return <GridPage />
  if (sub === DRAW) return <DrawingTable key={id} id={id} />
  if (sub === PRINT) return <PrintPage key={id} id={id} />
  switch (planOf(sub)) {
    case 'parts':
      return <PartsView key={id} id={id} />
    case 'colourways':
      return <ColourwaysView key={id} id={id} />
    case 'versions':
      return <VersionsView key={id} id={id} />
    case undefined:
  }
  return <DesignPage key={id} id={id} view={viewOf(sub)} />
}
