import { usePlace } from '../../app/place.ts'
import { MaterialPage } from './material-page.tsx'
import { StockImport } from './stock-import.tsx'
import { StockList } from './stock-list.tsx'
import './stock.css'

/** The address part of the spreadsheet's way in; no material has such an id. */
export const BRING_IN = 'bring-in'

/** Stock: the drawers, one material, or the way in for a spreadsheet. */
export function StockRoom() {
  const { id } = usePlace()
  if (id === undefined) return <StockList />
  if (id === BRING_IN) return <StockImport />
  return <MaterialPage key={id} id={id} />
}
