import type { BeadFinish, BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import { ellipse, type PathStep, roundedBox } from '../../../../shared-core/colour/path-step.ts'
import type { Mark } from '../draw-list.ts'
import { mixed } from './colours.ts'

/** A bead where it lies: centre, box before it is turned, colour; mm on the page. */
export type DrawnBead = Readonly<{
  xMm: number
  yMm: number
  widthMm: number
  heightMm: number
  turnRad: number
  colour: string
  finish: BeadFinish
  isRound: boolean
}>

/** Whether a form is drawn round at its ends: all but the ones cut from a tube or a cube. */
export function isRoundForm(form: BeadForm): boolean {
  return form.family !== 'cylinder' && form.family !== 'bugle' && form.family !== 'cube'
}

/** Beads are drawn a little apart, as light between them shows each. */
const DRAWN = 0.95

/** Beads in one light from the upper left: body, edge and shine by finish; alike ones in one mark each. */
export function beadMarks(beads: readonly DrawnBead[]): readonly Mark[] {
  const alike = Map.groupBy(beads, (bead) =>
    [bead.colour, bead.finish, bead.isRound, bead.turnRad, bead.widthMm, bead.heightMm].join(' '),
  )
  return [...alike.values()].flatMap((group) => {
    const [first] = group
    if (first === undefined) return []
    const stamp = (outline: readonly PathStep[], style: Style): Mark => ({
      kind: 'stamps',
      outline,
      placesMm: group.map(({ xMm, yMm }) => [xMm, yMm] as const),
      turnRad: first.turnRad,
      fill: style.fill,
      stroke: style.stroke ?? null,
    })
    return layers(first).map(([outline, style]) => stamp(outline, style))
  })
}

type Style = Readonly<{ fill: string; stroke?: Readonly<{ colour: string; widthMm: number }> }>

function layers(bead: DrawnBead): readonly (readonly [readonly PathStep[], Style])[] {
  const [w, h] = [bead.widthMm * DRAWN, bead.heightMm * DRAWN]
  const least = Math.min(w, h)
  const edge = mixed(bead.colour, '#000000', 0.42)
  const body: readonly [readonly PathStep[], Style] = [
    roundedBox(w, h, least * (bead.isRound ? 0.5 : 0.22)),
    { fill: bead.colour, stroke: { colour: edge, widthMm: Math.min(0.16, least * 0.05) } },
  ]
  // Under half a millimetre a shine is dust.
  if (least < 0.5) return [body]
  return [body, ...shine(bead, w, h)]
}

/** How far the shine goes to white, and how much of the bead it takes, by finish. */
const SHINE: Readonly<Record<BeadFinish, readonly [light: number, size: number]>> = {
  matte: [0.14, 1.25],
  opaque: [0.42, 0.8],
  gloss: [0.62, 0.85],
  transparent: [0.5, 1],
  lined: [0.5, 0.8],
  metallic: [0.72, 1],
  iridescent: [0.55, 1],
}

function shine(
  { colour, finish }: DrawnBead,
  w: number,
  h: number,
): readonly (readonly [readonly PathStep[], Style])[] {
  const [light, size] = SHINE[finish]
  const spot = (x: number, y: number, rx: number, ry: number) =>
    ellipse({ x: x * w, y: y * h, radiusX: rx * w, radiusY: ry * h })
  const upper = spot(-0.14, -0.2, 0.22 * size, 0.13 * size)
  const glow = { fill: mixed(colour, '#ffffff', light) }
  switch (finish) {
    case 'transparent':
      // Light gathers at the side away from the lamp, inside the glass.
      return [
        [spot(0.08, 0.14, 0.3, 0.22), { fill: mixed(colour, '#ffffff', 0.26) }],
        [upper, glow],
      ]
    case 'lined':
      return [
        [spot(0, 0, 0.2, 0.36), { fill: mixed(colour, '#000000', 0.18) }],
        [upper, glow],
      ]
    case 'iridescent':
      return [
        [spot(0.12, 0.16, 0.22, 0.14), { fill: mixed(colour, '#8a5fd0', 0.34) }],
        [upper, { fill: mixed(mixed(colour, '#7fd6c8', 0.4), '#ffffff', 0.4) }],
      ]
    case 'metallic':
      return [
        [spot(0.04, 0.24, 0.3, 0.1), { fill: mixed(colour, '#000000', 0.24) }],
        [upper, glow],
      ]
    default:
      return [[upper, glow]]
  }
}
