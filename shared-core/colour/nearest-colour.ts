import { ciede2000 } from './ciede2000.ts'
import { labOfHex } from './lab.ts'

/** The nearest of several colours, and how far off it is. */
export type NearColour<C> = Readonly<{ one: C; deltaE: number }>

/**
 * Of several coloured things the one nearest to a colour by CIEDE2000; the earlier one of two as near.
 *
 * @param wantedHex - `#rrggbb`.
 * @returns `undefined` when there are none.
 */
export function nearestColour<C extends Readonly<{ colourHex: string }>>(
  wantedHex: string,
  candidates: readonly C[],
): NearColour<C> | undefined {
  const wanted = labOfHex(wantedHex)
  let nearest: NearColour<C> | undefined
  for (const one of candidates) {
    const deltaE = ciede2000(wanted, labOfHex(one.colourHex))
    if (nearest === undefined || deltaE < nearest.deltaE) nearest = { one, deltaE }
  }
  return nearest
}
