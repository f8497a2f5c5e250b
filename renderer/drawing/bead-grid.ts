import { type BeadScene, beadReach } from './bead-scene.ts'

/** A box in mm. */
export type BoxMm = Readonly<{ left: number; top: number; right: number; bottom: number }>

/** Finds beads by place: squares of the work, each with the numbers of the beads whose centres lie in it. */
export type BeadGrid = Readonly<{
  /** Calls back with each bead that may show in a box, square by square from the top left. */
  forEachIn: (box: BoxMm, visit: (bead: number) => void) => void
}>

const BEADS_ACROSS = 8

/** Sorts the beads of a scene into squares by counting: two passes, 4 bytes a bead. */
export function buildGrid(scene: BeadScene): BeadGrid {
  const { xMm, yMm } = scene
  const reach = beadReach(scene)
  const side = Math.max(0.1, BEADS_ACROSS * 2 * Math.max(reach.xMm, reach.yMm))
  const columns = Math.max(1, Math.ceil(scene.widthMm / side) + 1)
  const rows = Math.max(1, Math.ceil(scene.heightMm / side) + 1)
  const clamp = (value: number, most: number) => Math.min(most, Math.max(0, value))
  const squareOf = (bead: number) =>
    clamp(Math.floor((yMm[bead] ?? 0) / side), rows - 1) * columns +
    clamp(Math.floor((xMm[bead] ?? 0) / side), columns - 1)

  const from = new Uint32Array(columns * rows + 1)
  for (let bead = 0; bead < xMm.length; bead += 1) {
    const next = squareOf(bead) + 1
    from[next] = (from[next] ?? 0) + 1
  }
  for (let square = 1; square < from.length; square += 1) {
    from[square] = (from[square] ?? 0) + (from[square - 1] ?? 0)
  }
  const beads = new Uint32Array(xMm.length)
  const filled = from.slice()
  for (let bead = 0; bead < xMm.length; bead += 1) {
    const square = squareOf(bead)
    const place = filled[square] ?? 0
    beads[place] = bead
    filled[square] = place + 1
  }

  function forEachIn(box: BoxMm, visit: (bead: number) => void): void {
    const left = box.left - reach.xMm
    const top = box.top - reach.yMm
    const right = box.right + reach.xMm
    const bottom = box.bottom + reach.yMm
    const firstColumn = clamp(Math.floor(left / side), columns - 1)
    const lastColumn = clamp(Math.floor(right / side), columns - 1)
    const firstRow = clamp(Math.floor(top / side), rows - 1)
    const lastRow = clamp(Math.floor(bottom / side), rows - 1)
    for (let row = firstRow; row <= lastRow; row += 1) {
      for (let column = firstColumn; column <= lastColumn; column += 1) {
        const square = row * columns + column
        const end = from[square + 1] ?? 0
        for (let place = from[square] ?? 0; place < end; place += 1) {
          const bead = beads[place] ?? 0
          const x = xMm[bead] ?? 0
          const y = yMm[bead] ?? 0
          if (x >= left && x <= right && y >= top && y <= bottom) visit(bead)
        }
      }
    }
  }

  return { forEachIn }
}
