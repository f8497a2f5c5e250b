import { slotLabel } from '../chart/chart.ts'
import { ellipse, type PathStep, polygon } from './path-step.ts'

/**
 * What tells a slot in a chart without its colour: a filled outline in a box from -1 to 1, y down
 * (holes by the nonzero rule), or the slot's letter where there are more slots than shapes.
 */
export type SlotSymbol =
  | Readonly<{ kind: 'shape'; name: string; outline: readonly PathStep[] }>
  | Readonly<{ kind: 'letter'; name: string; text: string }>

/**
 * The symbol of a slot: one of 24 shapes, then its letter.
 *
 * The first shapes differ in outline, weight and direction, so that they are told apart in black and
 * white, in a small print and turned a little. Chosen by us.
 *
 * @param index - The slot, 0 for A.
 * @example slotSymbol(0) // a dot
 */
export function slotSymbol(index: number): SlotSymbol {
  const shape = SHAPES[index]
  if (shape !== undefined) return { kind: 'shape', name: shape[0], outline: shape[1] }
  const text = slotLabel(index)
  return { kind: 'letter', name: `the letter ${text}`, text }
}

/** The symbols of the first `n` slots, in order; the same slot always gets the same symbol. */
export function slotSymbols(n: number): readonly SlotSymbol[] {
  return Array.from({ length: n }, (_, index) => slotSymbol(index))
}

const disc = (x: number, y: number, radius: number, isHole = false) =>
  ellipse({ x, y, radiusX: radius, radiusY: radius, isHole })

const box = (left: number, top: number, right: number, bottom: number) =>
  polygon([left, top, right, top, right, bottom, left, bottom])

/** A box cut out of what lies round it: its corners run the other way. */
const boxHole = (half: number) => polygon([-half, -half, -half, half, half, half, half, -half])

const turned = (outline: readonly PathStep[], quarters: 1 | 2 | 3): readonly PathStep[] =>
  outline.map((step): PathStep => {
    if (step[0] === 'Z' || step[0] === 'C') return step
    const [letter, x, y] = step
    if (quarters === 1) return [letter, -y, x]
    return quarters === 2 ? [letter, -x, -y] : [letter, y, -x]
  })

const PLUS = polygon([
  -0.22, -0.8, 0.22, -0.8, 0.22, -0.22, 0.8, -0.22, 0.8, 0.22, 0.22, 0.22, 0.22, 0.8, -0.22, 0.8,
  -0.22, 0.22, -0.8, 0.22, -0.8, -0.22, -0.22, -0.22,
])
const CROSS = polygon([
  -0.42, -0.74, 0, -0.32, 0.42, -0.74, 0.74, -0.42, 0.32, 0, 0.74, 0.42, 0.42, 0.74, 0, 0.32, -0.42,
  0.74, -0.74, 0.42, -0.32, 0, -0.74, -0.42,
])
const SLASH = polygon([0.4, -0.82, 0.8, -0.5, -0.4, 0.82, -0.8, 0.5])
const CHEVRON = polygon([0, -0.7, 0.85, 0.15, 0.52, 0.5, 0, -0.02, -0.52, 0.5, -0.85, 0.15])
const UP = polygon([0, -0.78, 0.84, 0.66, -0.84, 0.66])
const HOURGLASS = polygon([-0.7, -0.78, 0.7, -0.78, 0.08, 0, 0.7, 0.78, -0.7, 0.78, -0.08, 0])
const DIAMOND = polygon([0, -0.88, 0.66, 0, 0, 0.88, -0.66, 0])
const TEE = polygon([
  -0.75, -0.75, 0.75, -0.75, 0.75, -0.3, 0.23, -0.3, 0.23, 0.8, -0.23, 0.8, -0.23, -0.3, -0.75,
  -0.3,
])
const ELL = polygon([-0.65, -0.8, -0.2, -0.8, -0.2, 0.33, 0.7, 0.33, 0.7, 0.78, -0.65, 0.78])

function star(): readonly PathStep[] {
  return polygon(
    Array.from({ length: 10 }, (_, i) => {
      const radius = i % 2 === 0 ? 0.92 : 0.38
      const angle = (i * Math.PI) / 5
      return [radius * Math.sin(angle), -radius * Math.cos(angle) + 0.06]
    }).flat(),
  )
}

const SHAPES: readonly (readonly [name: string, outline: readonly PathStep[]])[] = [
  ['a dot', disc(0, 0, 0.5)],
  ['a cross', CROSS],
  ['a triangle pointing up', UP],
  ['a square frame', [...box(-0.68, -0.68, 0.68, 0.68), ...boxHole(0.34)]],
  ['a level bar', box(-0.8, -0.24, 0.8, 0.24)],
  ['a ring', [...disc(0, 0, 0.78), ...disc(0, 0, 0.42, true)]],
  ['a diamond', DIAMOND],
  ['a plus', PLUS],
  ['a triangle pointing down', turned(UP, 2)],
  ['a square', box(-0.6, -0.6, 0.6, 0.6)],
  ['an upright bar', box(-0.24, -0.8, 0.24, 0.8)],
  ['a star', star()],
  ['a rising stroke', SLASH],
  ['two dots', [...disc(-0.45, 0, 0.33), ...disc(0.45, 0, 0.33)]],
  ['an hourglass', HOURGLASS],
  ['a chevron pointing up', CHEVRON],
  ['a falling stroke', turned(SLASH, 1)],
  ['a diamond frame', [...DIAMOND, ...polygon([0, -0.42, -0.32, 0, 0, 0.42, 0.32, 0])]],
  ['a tee', TEE],
  ['two level bars', [...box(-0.75, -0.62, 0.75, -0.2), ...box(-0.75, 0.2, 0.75, 0.62)]],
  ['a chevron pointing down', turned(CHEVRON, 2)],
  ['a bow tie', turned(HOURGLASS, 1)],
  ['an ell', ELL],
  [
    'four dots',
    [
      ...disc(-0.42, -0.42, 0.28),
      ...disc(0.42, -0.42, 0.28),
      ...disc(-0.42, 0.42, 0.28),
      ...disc(0.42, 0.42, 0.28),
    ],
  ],
]
