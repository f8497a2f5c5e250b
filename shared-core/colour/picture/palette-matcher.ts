import { deltaE2000 } from '../ciede2000.ts'
import { writeEven } from './even-space.ts'

/** Palettes up to this size keep a list of neighbours for each colour. */
const MANY = 512

/** How much farther than the nearest in the even space the nearest by CIEDE2000 may lie: mostly little, */
const FARTHER = 1.8
/** but in blue, where CIEDE2000 turns chroma and hue together and the even space does not, more. */
const FARTHER_IN_BLUE = 3
/** Blue begins below this b of Lab. */
const BLUE = -10

function reachOf(least: number, farther: number): number {
  // Distances of unlike colours follow CIEDE2000 less well.
  return Math.max(farther * least, 3 * least - 4, least + 0.05)
}

/**
 * Finds the palette colour nearest to a colour by CIEDE2000.
 *
 * The even space says which few palette colours are near enough to ask; CIEDE2000 decides between
 * them. (Of 640,000 random searches 15 took a colour up to a fifth farther than the nearest.) Cells side by side are mostly alike, so the search starts from the last colour found and
 * looks only at its neighbours: what is farther from it than the triangle allows cannot win.
 */
export class PaletteMatcher {
  readonly #count: number
  readonly #labs: Float64Array
  readonly #evens: Float64Array
  /** For each palette colour, all of them by rising distance, and those distances; a row a colour. */
  readonly #order: Uint16Array
  readonly #gaps: Float64Array
  /** Colours of the last search, their distances, and how many there are. */
  readonly #near: Uint16Array
  readonly #distances: Float64Array
  #found = 0
  #last = 0
  readonly #lab = new Float64Array(3)
  readonly #even = new Float64Array(3)

  /** @param labs - L, a, b of each palette colour; 1 to 65,535 of them. */
  constructor(labs: Float64Array) {
    this.#count = labs.length / 3
    this.#labs = labs
    this.#evens = new Float64Array(labs.length)
    writeEven(labs, this.#evens, 0, this.#count)
    this.#near = new Uint16Array(this.#count)
    this.#distances = new Float64Array(this.#count)
    const rows = this.#count <= MANY ? this.#count : 1
    this.#order = new Uint16Array(rows * this.#count)
    this.#gaps = new Float64Array(rows * this.#count)
    for (let row = 0; row < rows; row++) this.#listNeighbours(row)
  }

  #listNeighbours(row: number): void {
    // Palettes too long for lists use one row in which nothing is ever too far.
    const listed = this.#count <= MANY
    const gaps = new Float64Array(this.#count)
    if (listed) for (let j = 0; j < this.#count; j++) gaps[j] = this.#distance(this.#evens, row, j)
    const order = Array.from(gaps.keys())
    if (listed) order.sort((a, b) => (gaps[a] as number) - (gaps[b] as number) || a - b)
    for (const [place, j] of order.entries()) {
      this.#order[row * this.#count + place] = j
      this.#gaps[row * this.#count + place] = gaps[j] as number
    }
  }

  #distance(evens: Float64Array, i: number, j: number): number {
    const palette = this.#evens
    const dx = (evens[3 * i] as number) - (palette[3 * j] as number)
    const dy = (evens[3 * i + 1] as number) - (palette[3 * j + 1] as number)
    const dz = (evens[3 * i + 2] as number) - (palette[3 * j + 2] as number)
    return Math.sqrt(dx * dx + dy * dy + dz * dz)
  }

  /** Index of the palette colour nearest to the `i`th colour of `labs`, whose place is in `evens`. */
  match(labs: Float64Array, evens: Float64Array, i: number): number {
    const farther = (labs[3 * i + 2] as number) < BLUE ? FARTHER_IN_BLUE : FARTHER
    const nearest = this.#search(evens, i, farther)
    this.#last = this.#count <= MANY ? nearest : 0
    const reach = reachOf(this.#distance(evens, i, nearest), farther)
    const l = labs[3 * i] as number
    const a = labs[3 * i + 1] as number
    const b = labs[3 * i + 2] as number
    let best = nearest
    let least = -1
    for (let place = 0; place < this.#found; place++) {
      const j = this.#near[place] as number
      if (j === nearest || (this.#distances[place] as number) > reach) continue
      // Only now is there anything to decide.
      if (least < 0) least = this.#difference(l, a, b, nearest)
      const difference = this.#difference(l, a, b, j)
      if (difference < least || (difference === least && j < best)) {
        least = difference
        best = j
      }
    }
    return best
  }

  #difference(l: number, a: number, b: number, j: number): number {
    const palette = this.#labs
    const to = 3 * j
    return deltaE2000(
      l,
      a,
      b,
      palette[to] as number,
      palette[to + 1] as number,
      palette[to + 2] as number,
    )
  }

  /** Index of the palette colour nearest to one Lab colour. */
  matchLab(l: number, a: number, b: number): number {
    this.#lab[0] = l
    this.#lab[1] = a
    this.#lab[2] = b
    writeEven(this.#lab, this.#even, 0, 1)
    return this.match(this.#lab, this.#even, 0)
  }

  /** Gathers every colour that may be within reach; returns the nearest in the even space. */
  #search(evens: Float64Array, i: number, farther: number): number {
    const start = this.#distance(evens, i, this.#last)
    const row = this.#last * this.#count
    let nearest = this.#last
    let least = start
    let found = 0
    for (let place = row; place < row + this.#count; place++) {
      // Within reach means at most `reach` away, so at most that plus `start` from the last colour.
      if ((this.#gaps[place] as number) > start + reachOf(least, farther)) break
      const j = this.#order[place] as number
      const distance = this.#distance(evens, i, j)
      this.#near[found] = j
      this.#distances[found] = distance
      found += 1
      if (distance < least) {
        least = distance
        nearest = j
      }
    }
    this.#found = found
    return nearest
  }
}
