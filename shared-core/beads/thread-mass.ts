import { estimated, exactly, type Spread, weakerBasis } from '../units/spread.ts'
import type { Thread, ThreadConstruction } from './thread.ts'

/**
 * Density of thread as it lies, mg per cubic mm of its round section: gel-spun 0.97, nylon 1.14.
 *
 * @source Densities of the fibres; 6 lb braid of 0.17 mm then comes to 22 g per 1000 m, as stated.
 */
const DENSITY: Readonly<Record<ThreadConstruction, number>> = {
  braided: 0.97,
  twisted: 1.14,
  flat: 1.14,
  bonded: 1.14,
}

/** A thread's tex (g per 1000 m): as stated, with a tenth either way, else from its section and density. */
export function threadTex(thread: Thread): Spread {
  const { tex } = thread
  if (tex !== undefined) return estimated(0.9 * tex, tex, 1.1 * tex)
  const { low, value, high, basis } = thread.diameterMm
  const of = (mm: number) => (Math.PI / 4) * mm * mm * DENSITY[thread.construction] * 1000
  return { low: of(low), value: of(value), high: of(high), basis: weakerBasis(basis, 'estimated') }
}

/** Mass of a length of thread in whole mg (one mm of 1 tex weighs 0.001 mg). */
export function threadMass(thread: Thread, lengthMm: number | Spread): Spread {
  const length = typeof lengthMm === 'number' ? exactly(lengthMm) : lengthMm
  const tex = threadTex(thread)
  return {
    value: Math.round((tex.value * length.value) / 1000),
    low: Math.floor((tex.low * length.low) / 1000),
    high: Math.ceil((tex.high * length.high) / 1000),
    basis: weakerBasis(tex.basis, length.basis),
  }
}
