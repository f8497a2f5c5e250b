/** One step of an outline: move, line, Bezier curve, close. Coordinates x right, y down. */
export type PathStep =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z']

/** An outline turned clockwise round its origin, then scaled and moved: x' = x * scale + toX. */
export function placedOutline(
  outline: readonly PathStep[],
  place: Readonly<{ scale: number; turnRad?: number; toX?: number; toY?: number }>,
): readonly PathStep[] {
  const { scale, turnRad = 0, toX = 0, toY = 0 } = place
  const [sine, cosine] = [Math.sin(turnRad), Math.cos(turnRad)]
  const x = (px: number, py: number) => (px * cosine - py * sine) * scale + toX
  const y = (px: number, py: number) => (px * sine + py * cosine) * scale + toY
  return outline.map((step): PathStep => {
    switch (step[0]) {
      case 'Z':
        return step
      case 'C': {
        const [, ax, ay, bx, by, cx, cy] = step
        return ['C', x(ax, ay), y(ax, ay), x(bx, by), y(bx, by), x(cx, cy), y(cx, cy)]
      }
      default:
        return [step[0], x(step[1], step[2]), y(step[1], step[2])]
    }
  })
}

/** An outline as the `d` of an SVG path, coordinates to `digits` decimals. */
export function pathText(outline: readonly PathStep[], digits = 3): string {
  const round = (value: number) => String(Number(value.toFixed(digits)) + 0)
  return outline
    .map(
      ([letter, ...numbers]) => `${letter}${(numbers as readonly number[]).map(round).join(' ')}`,
    )
    .join('')
}

/** Share of a radius at which a quarter circle's control points stand. @source common: 4/3 (sqrt 2 - 1) */
export const QUARTER = 0.5522847498

/** An ellipse round a centre; `isHole` runs the other way round, so that it cuts a hole by the nonzero rule. */
export function ellipse(
  centre: Readonly<{ x: number; y: number; radiusX: number; radiusY: number; isHole?: boolean }>,
): readonly PathStep[] {
  const { x, y, radiusX: a, isHole = false } = centre
  const b = isHole ? -centre.radiusY : centre.radiusY
  const [u, v] = [a * QUARTER, b * QUARTER]
  return [
    ['M', x + a, y],
    ['C', x + a, y + v, x + u, y + b, x, y + b],
    ['C', x - u, y + b, x - a, y + v, x - a, y],
    ['C', x - a, y - v, x - u, y - b, x, y - b],
    ['C', x + u, y - b, x + a, y - v, x + a, y],
    ['Z'],
  ]
}

/** A rectangle round the origin with rounded corners. */
export function roundedBox(width: number, height: number, radius: number): readonly PathStep[] {
  const r = Math.min(radius, width / 2, height / 2)
  const [a, b, k] = [width / 2, height / 2, r * (1 - QUARTER)]
  return [
    ['M', r - a, -b],
    ['L', a - r, -b],
    ['C', a - k, -b, a, k - b, a, r - b],
    ['L', a, b - r],
    ['C', a, b - k, a - k, b, a - r, b],
    ['L', r - a, b],
    ['C', k - a, b, -a, b - k, -a, b - r],
    ['L', -a, r - b],
    ['C', -a, k - b, k - a, -b, r - a, -b],
    ['Z'],
  ]
}

/** A closed polygon from its corners, `[x, y, x, y ...]`. */
export function polygon(corners: readonly number[]): readonly PathStep[] {
  const steps: PathStep[] = []
  for (let i = 0; i + 1 < corners.length; i += 2) {
    steps.push([i === 0 ? 'M' : 'L', corners[i] ?? 0, corners[i + 1] ?? 0])
  }
  return [...steps, ['Z']]
}
