import type { CellNeighbours } from './cell-neighbours.ts'

/** What a cell would cost in another colour: `cost(cell, colour)`, in CIEDE2000. */
export type RecolourCost = (cell: number, colour: number) => number

/** One patch: cells of one colour that touch. */
type Patches = Readonly<{ patchOf: Int32Array; cells: readonly (readonly number[])[] }>

/**
 * Recolours patches smaller than `least` cells, in place, so that no stray beads are left.
 *
 * Smallest first, each takes the colour of the neighbouring patch that costs it least. A patch that
 * touches nothing stays. Each round leaves fewer patches, so it ends.
 *
 * @param colours - A colour a cell, or `none` where there is no bead.
 * @returns how many cells were recoloured.
 */
export function recolourStrays(
  colours: Uint16Array,
  none: number,
  neighbours: CellNeighbours,
  least: number,
  cost: RecolourCost,
): number {
  let recoloured = 0
  for (;;) {
    const patches = findPatches(colours, none, neighbours)
    const changed = recolourRound(colours, none, neighbours, patches, least, cost)
    if (changed === 0) return recoloured
    recoloured += changed
  }
}

/** Finds the patches of a colouring, numbered by their first cell. */
function findPatches(colours: Uint16Array, none: number, { starts, of }: CellNeighbours): Patches {
  const patchOf = new Int32Array(colours.length).fill(-1)
  const cells: number[][] = []
  for (let first = 0; first < colours.length; first++) {
    if (patchOf[first] !== -1 || colours[first] === none) continue
    const patch = [first]
    patchOf[first] = cells.length
    for (let i = 0; i < patch.length; i++) {
      const cell = patch[i] as number
      for (let j = starts[cell] as number; j < (starts[cell + 1] as number); j++) {
        const next = of[j] as number
        if (patchOf[next] !== -1 || colours[next] !== colours[first]) continue
        patchOf[next] = cells.length
        patch.push(next)
      }
    }
    cells.push(patch)
  }
  return { patchOf, cells }
}

function recolourRound(
  colours: Uint16Array,
  none: number,
  neighbours: CellNeighbours,
  { patchOf, cells }: Patches,
  least: number,
  cost: RecolourCost,
): number {
  const sizeOf = (patch: number) => cells[patch]?.length ?? 0
  const small = Array.from(cells.keys())
    .filter((patch) => sizeOf(patch) < least)
    .toSorted((a, b) => sizeOf(a) - sizeOf(b) || a - b)
  const grown = new Set<number>()
  let changed = 0
  for (const patch of small) {
    // It has taken in another patch this round: look at it again with its new size.
    if (grown.has(patch)) continue
    const members = cells[patch] ?? []
    const colour = cheapestAround(members, colours, none, neighbours, cost)
    if (colour === undefined) continue
    for (const taken of patchesAround(members, colours, colour, neighbours, patchOf))
      grown.add(taken)
    for (const cell of members) colours[cell] = colour
    changed += members.length
  }
  return changed
}

/** The neighbouring colour that costs a patch least; ties go to the lower colour. */
function cheapestAround(
  members: readonly number[],
  colours: Uint16Array,
  none: number,
  { starts, of }: CellNeighbours,
  cost: RecolourCost,
): number | undefined {
  const own = colours[members[0] as number]
  const around = new Set<number>()
  for (const cell of members) {
    for (let j = starts[cell] as number; j < (starts[cell + 1] as number); j++) {
      const colour = colours[of[j] as number] as number
      if (colour !== none && colour !== own) around.add(colour)
    }
  }
  let best: number | undefined
  let least = Number.POSITIVE_INFINITY
  for (const colour of [...around].toSorted((a, b) => a - b)) {
    const sum = members.reduce((total, cell) => total + cost(cell, colour), 0)
    if (sum < least) {
      least = sum
      best = colour
    }
  }
  return best
}

function patchesAround(
  members: readonly number[],
  colours: Uint16Array,
  colour: number,
  { starts, of }: CellNeighbours,
  patchOf: Int32Array,
): Set<number> {
  const found = new Set<number>()
  for (const cell of members) {
    for (let j = starts[cell] as number; j < (starts[cell + 1] as number); j++) {
      const next = of[j] as number
      if (colours[next] === colour) found.add(patchOf[next] as number)
    }
  }
  return found
}
