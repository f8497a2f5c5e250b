import { usePlace } from '../../app/place.ts'
import { MaterialPage } from './material-page.tsx'
import { StockImport } from './stock-import.tsx'
import { StockList } from './stock-list.tsx'
import { BRING_IN } from './stock-places.ts'
import './stock.css'

/** Stock: the drawers, one material, or the way in for a spreadsheet. */
export function StockRoom() {
  const { id } = usePlace()
  if (id === undefined) return <StockList />
  if (id === BRING_IN) return <StockImport />
  return <MaterialPage key={id} id={id} />
}
