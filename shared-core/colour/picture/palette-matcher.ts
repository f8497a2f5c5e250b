import { deltaE2000 } from '../ciede2000.ts'
import { writeEven } from './even-space.ts'

/** Colours this much farther than the nearest in the even space may still be nearest by CIEDE2000. */
const NEARLY = 1.5
/** And colours this near to it always may. */
const CLOSE = 0.5

/**
 * Finds the palette colour nearest to a colour by CIEDE2000.
 *
 * The even space says which few palette colours are near enough to ask; CIEDE2000 decides between
 * them. `deltaE` is the difference of the last match.
 */
export class PaletteMatcher {
  readonly #labs: Float64Array
  readonly #evens: Float64Array
  readonly #squares: Float64Array
  readonly #lab = new Float64Array(3)
  readonly #even = new Float64Array(3)
  /** CIEDE2000 between the last colour matched and the palette colour found for it. */
  deltaE = 0

  /** @param labs - L, a, b of each palette colour; at least one. */
  constructor(labs: Float64Array) {
    this.#labs = labs
    this.#evens = new Float64Array(labs.length)
    writeEven(labs, this.#evens, 0, labs.length / 3)
    this.#squares = new Float64Array(labs.length / 3)
  }

  /** Index of the palette colour nearest to the `i`th colour of `labs`, whose place is in `evens`. */
  match(labs: Float64Array, evens: Float64Array, i: number): number {
    const within = this.#measure(evens, 3 * i)
    const l = labs[3 * i] as number
    const a = labs[3 * i + 1] as number
    const b = labs[3 * i + 2] as number
    const palette = this.#labs
    let best = 0
    let least = Number.POSITIVE_INFINITY
    for (let j = 0; j < this.#squares.length; j++) {
      if ((this.#squares[j] as number) > within) continue
      const deltaE = deltaE2000(
        l,
        a,
        b,
        palette[3 * j] as number,
        palette[3 * j + 1] as number,
        palette[3 * j + 2] as number,
      )
      if (deltaE < least) {
        least = deltaE
        best = j
      }
    }
    this.deltaE = least
    return best
  }

  /** Index of the palette colour nearest to one Lab colour. */
  matchLab(l: number, a: number, b: number): number {
    this.#lab[0] = l
    this.#lab[1] = a
    this.#lab[2] = b
    writeEven(this.#lab, this.#even, 0, 1)
    return this.match(this.#lab, this.#even, 0)
  }

  /** Squared distances from a place to every palette colour; returns the farthest worth asking. */
  #measure(evens: Float64Array, at: number): number {
    const x = evens[at] as number
    const y = evens[at + 1] as number
    const z = evens[at + 2] as number
    const palette = this.#evens
    const squares = this.#squares
    let least = Number.POSITIVE_INFINITY
    for (let j = 0, k = 0; j < squares.length; j++, k += 3) {
      const dx = x - (palette[k] as number)
      const dy = y - (palette[k + 1] as number)
      const dz = z - (palette[k + 2] as number)
      const square = dx * dx + dy * dy + dz * dz
      squares[j] = square
      if (square < least) least = square
    }
    const reach = Math.max(NEARLY * Math.sqrt(least), Math.sqrt(least) + CLOSE)
    return reach * reach
  }
}
