import type { Spread } from '../units/spread.ts'

/** How a thread is built: braided gel-spun, twisted nylon, flat nylon or bonded cord. */
export type ThreadConstruction = 'braided' | 'twisted' | 'flat' | 'bonded'

/** A thread: `diameterMm` as it lies in a hole, `tex` grams per 1000 m when known. */
export type Thread = Readonly<{
  id: string
  name: string
  construction: ThreadConstruction
  diameterMm: Spread
  tex?: number
}>

/** A beading needle: its trade size and the diameter of its wire in mm. */
export type Needle = Readonly<{ size: string; wireMm: Spread }>
