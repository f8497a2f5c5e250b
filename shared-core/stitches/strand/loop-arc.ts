import type { PointMm } from './point-mm.ts'

/** A curve from one hole end to another: where it is after so many mm, and which way it goes there (a unit vector). */
export type Curve = (mm: number) => Readonly<{ at: PointMm; way: PointMm }>

/**
 * The arc that a loop of a length hangs in between two points, bulging to one side; lengths in mm.
 *
 * A circle through both points, as large as the length allows: the sine of half its angle over half
 * its angle is the distance over the length. A loop shorter than the distance is a straight line.
 *
 * @param out - The side it bulges to, a unit vector.
 * @returns The curve from 0 mm at `from` to `lengthMm` at `to`.
 * @source Chord and arc of one circle: sin(angle / 2) / (angle / 2) = chord / arc, solved by halving.
 */
export function loopArc(from: PointMm, to: PointMm, lengthMm: number, out: PointMm): Curve {
  const chord = { x: to.x - from.x, y: to.y - from.y }
  const chordMm = Math.hypot(chord.x, chord.y)
  // A loop that comes back where it left has no chord: it may lie across the side it bulges to.
  const along =
    chordMm < 1e-6 ? { x: -out.y, y: out.x } : { x: chord.x / chordMm, y: chord.y / chordMm }
  if (lengthMm <= chordMm) {
    return (mm) => ({ at: { x: from.x + along.x * mm, y: from.y + along.y * mm }, way: along })
  }
  const normal = acrossTo(along, out)
  const angle = angleFor(chordMm / lengthMm)
  const radius = lengthMm / angle
  const drop = radius * Math.cos(angle / 2)
  const centre = {
    x: (from.x + to.x) / 2 - normal.x * drop,
    y: (from.y + to.y) / 2 - normal.y * drop,
  }
  return (mm) => {
    const turn = mm / radius - angle / 2
    const [sine, cosine] = [Math.sin(turn), Math.cos(turn)]
    return {
      at: {
        x: centre.x + radius * (sine * along.x + cosine * normal.x),
        y: centre.y + radius * (sine * along.y + cosine * normal.y),
      },
      way: {
        x: cosine * along.x - sine * normal.x,
        y: cosine * along.y - sine * normal.y,
      },
    }
  }
}

/** How a direction leans from upwards, radians clockwise, -pi to pi. */
export function leanOf(way: PointMm): number {
  return Math.atan2(way.x, -way.y)
}

/** The unit vector across a line that points to the side of `out`. */
function acrossTo(along: PointMm, out: PointMm): PointMm {
  const across = { x: along.y, y: -along.x }
  const isOut = across.x * out.x + across.y * out.y >= 0
  return isOut ? across : { x: -across.x, y: -across.y }
}

const HALVINGS = 40

/** The angle, up to a full turn, whose chord is this share of its arc; by halving, to about 1e-11. */
function angleFor(share: number): number {
  let [low, high] = [1e-6, 2 * Math.PI]
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2
    if (Math.sin(middle / 2) / (middle / 2) > share) low = middle
    else high = middle
  }
  return (low + high) / 2
}
