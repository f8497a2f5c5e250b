import type { CoverLine } from '../../../shared-core/stock/cover.ts'
import type { Lot } from '../../../shared-core/stock/lot.ts'
import type { MaterialNeed } from '../../../shared-core/stock/material-need.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'

/** A need whose beads show: whole units from one lot. */
export const shows = (materialId: string, quantity: number): MaterialNeed => ({
  materialId,
  unit: 'mg',
  lotsMatter: true,
  quantity,
})

/** A need that any lots together can meet. */
export const pooled = (materialId: string, quantity: number): MaterialNeed => ({
  materialId,
  unit: 'piece',
  lotsMatter: false,
  quantity,
})

/** A lot by its name, material and what is on hand. */
export const lot = (lotId: string, materialId: string, onHand: number): Lot => ({
  lotId,
  materialId,
  onHand,
})

/** A line due on one day; its number says when it was entered. */
export const line = (lineId: string, units: number, needs: readonly MaterialNeed[]): CoverLine => ({
  lineId,
  dueOn: calendarDate('2026-03-14'),
  entry: Number(lineId.replace(/\D/g, '')),
  units,
  needs,
})
