import { estimated, measured } from '../../../shared-core/units/spread.ts'

/** A bead form the reference tables do not know, measured at the bench. */
export const tideDrop = {
  id: 'tide-drop',
  name: 'Tide drop 3,5 mm',
  family: 'drop' as const,
  sizeLabel: '3.5 mm',
  diameterMm: measured(3.4, 3.5, 3.6),
  lengthMm: measured(3.3, 3.4, 3.6),
  holeMm: measured(0.75, 0.8, 0.85),
  beadsPerGram: measured(14, 15, 16),
  cullRate: estimated(0.01, 0.03, 0.05),
}

/** A thread the reference tables do not know. */
export const saltCord = {
  id: 'salt-cord',
  name: 'Salt cord',
  construction: 'twisted' as const,
  diameterMm: measured(0.2, 0.22, 0.25),
  tex: 50,
}
