import type { Chart } from './chart.ts'
import { chartBounds } from './layout.ts'
import type { StitchPitch } from './stitch-pitch.ts'
import { silhouetteStripes } from './stripes.ts'
import { traceLoops } from './trace-loops.ts'

/**
 * One closed line of a silhouette.
 *
 * `points` holds x and y in turn, in mm, y down; the last point joins the first. Outer lines run
 * clockwise as seen, holes the other way. `areaMm2` is what the line encloses.
 */
export type OutlineLoop = Readonly<{ points: Float64Array; isHole: boolean; areaMm2: number }>

/** A chart's silhouette: every closed line and the area within, holes left out. */
export type Outline = Readonly<{ loops: readonly OutlineLoop[]; areaMm2: number }>

/**
 * The silhouette of a chart's beads in mm.
 *
 * Each bead stands for its share of the lattice, so that thread gaps inside the work are covered, and
 * so are the open middles of right-angle weave; the outermost edges are those of the beads. Beads that
 * touch at a corner only are apart. Linear in cells, and in corners of the silhouette.
 */
export function traceOutline(chart: Chart, pitch: StitchPitch): Outline {
  const stripes = silhouetteStripes(chart)
  const { left, top, right, bottom } = chartBounds(chart, pitch)
  const { toX, toY } = chart.stitch === 'right-angle-weave' ? bandEdges(pitch) : shareEdges(pitch)
  const loops = traceLoops(stripes).map((points) =>
    loopInMm(
      points,
      (at) => clamp(toX(at), left, right),
      (level) => clamp(toY(level / stripes.perRow), top, bottom),
    ),
  )
  const areaMm2 = loops.reduce((sum, loop) => sum + (loop.isHole ? -1 : 1) * loop.areaMm2, 0)
  return { loops, areaMm2 }
}

type Edges = Readonly<{ toX: (at: number) => number; toY: (row: number) => number }>

function shareEdges({ leftMm, halfMm, topMm, downMm }: StitchPitch): Edges {
  return {
    toX: (at) => leftMm + (at - 1) * halfMm,
    toY: (row) => topMm + (row - 0.5) * downMm,
  }
}

/** Right-angle weave: joints as wide as a bead's diameter, between them the length of a bead. */
function bandEdges({ size: { diameterMm, lengthMm } }: StitchPitch): Edges {
  const edge = (band: number): number =>
    Math.floor(band / 2) * (diameterMm + lengthMm) + (band % 2 === 0 ? 0 : diameterMm)
  return { toX: edge, toY: edge }
}

function loopInMm(
  lattice: Int32Array,
  toX: (at: number) => number,
  toY: (level: number) => number,
): OutlineLoop {
  const points = new Float64Array(lattice.length)
  for (let i = 0; i < points.length; i += 2) {
    points[i] = toX(lattice[i] ?? 0)
    points[i + 1] = toY(lattice[i + 1] ?? 0)
  }
  const area = signedArea(points)
  return { points, isHole: area < 0, areaMm2: Math.abs(area) }
}

/** Shoelace formula; positive for a line that runs clockwise with y down. */
function signedArea(points: Float64Array): number {
  let twice = 0
  let [x, y] = [points.at(-2) ?? 0, points.at(-1) ?? 0]
  for (let i = 0; i < points.length; i += 2) {
    const nextX = points[i] ?? 0
    const nextY = points[i + 1] ?? 0
    twice += x * nextY - nextX * y
    x = nextX
    y = nextY
  }
  return twice / 2
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value))
}
