import type { BeadForm } from '../../shared-core/beads/bead-form.ts'
import { estimated } from '../../shared-core/units/spread.ts'
import { buildGrid } from './bead-grid.ts'
import type { BeadLook, Brush } from './bead-look.ts'
import { beadSprite } from './bead-sprites.ts'
import { chartScene } from './chart-scene.ts'
import { paintRegion, sceneSprites } from './paint-region.ts'

/** Loose beads in heaps, as they lie in a tray: where each heap is (shares of the canvas) and what it is of. */
const HEAPS: readonly (BeadLook & Readonly<{ x: number; y: number; count: number }>)[] = [
  { hex: '#2f6f82', finish: 'transparent', family: 'cylinder', x: 0.17, y: 0.2, count: 46 },
  { hex: '#e8dfd3', finish: 'gloss', family: 'cylinder', x: 0.8, y: 0.16, count: 40 },
  { hex: '#4b5a63', finish: 'matte', family: 'cylinder', x: 0.95, y: 0.5, count: 44 },
  { hex: '#d08a2e', finish: 'lined', family: 'cylinder', x: 0.12, y: 0.56, count: 38 },
  { hex: '#a9843f', finish: 'metallic', family: 'cylinder', x: 0.76, y: 0.85, count: 36 },
  { hex: '#5f8f5a', finish: 'opaque', family: 'cylinder', x: 0.24, y: 0.87, count: 42 },
  { hex: '#8fb3b5', finish: 'iridescent', family: 'drop', x: 0.48, y: 0.085, count: 9 },
]

/** Slots of the finished panel in the middle, from its edge inwards. */
const PANEL: readonly Omit<BeadLook, 'family'>[] = [
  { hex: '#24404e', finish: 'gloss' },
  { hex: '#2f6f82', finish: 'transparent' },
  { hex: '#8fb3b5', finish: 'iridescent' },
  { hex: '#e8dfd3', finish: 'gloss' },
  { hex: '#d08a2e', finish: 'lined' },
  { hex: '#a9843f', finish: 'metallic' },
  { hex: '#5f8f5a', finish: 'opaque' },
]

const FORM: BeadForm = {
  id: 'cylinder-11',
  name: 'Cylinder',
  family: 'cylinder',
  sizeLabel: '11/0',
  diameterMm: estimated(1.6, 1.6, 1.6),
  lengthMm: estimated(1.3, 1.3, 1.3),
  holeMm: estimated(0.8, 0.8, 0.8),
  beadsPerGram: estimated(200, 200, 200),
  cullRate: estimated(0, 0, 0),
}

const PANEL_WIDEST = 15

/**
 * Paints a tray of beads with a finished diamond among the heaps, a step for each bead that may have to
 * be painted first. Always the same tray for the same size, however many turns its steps take.
 */
export function* paintTray(brush: Brush, width: number, height: number): Generator<void> {
  const bead = Math.round(Math.min(width, height) / 34)
  const chance = mulberry(20_261_204)
  for (const heap of HEAPS) yield* paintHeap(brush, heap, { width, height, bead, chance })
  yield* paintPanel(brush, width, height, bead)
}

type Tray = Readonly<{ width: number; height: number; bead: number; chance: () => number }>

function* paintHeap(
  brush: Brush,
  { x, y, count, ...look }: (typeof HEAPS)[number],
  { width, height, bead, chance }: Tray,
): Generator<void> {
  const size =
    look.family === 'drop'
      ? { width: Math.round(bead * 1.15), height: Math.round(bead * 1.5) }
      : { width: bead, height: Math.round(bead * 0.84) }
  for (let i = 0; i < count; i += 1) {
    // A sunflower's order with a little disorder: no two beads quite on top of each other.
    const turn = i * 2.39996 + chance() * 0.5
    const far = Math.sqrt(i + 0.5) * bead * (0.62 + chance() * 0.2)
    // Leans of at most an eighth of a turn, so that the light still falls from the upper left.
    const lean = (Math.round(chance() * 12) - 6) * (Math.PI / 24) + 0.01
    const isLying = look.family !== 'drop' && chance() < 0.5
    const laid = isLying ? { width: size.height, height: size.width } : size
    const { image } = beadSprite(look, { ...laid, axis: isLying ? 'horizontal' : 'vertical', lean })
    const cx = x * width + Math.cos(turn) * far * 1.15
    const cy = y * height + Math.sin(turn) * far * 0.85
    brush.drawImage(image, Math.round(cx - image.width / 2), Math.round(cy - image.height / 2))
    yield
  }
}

function* paintPanel(brush: Brush, width: number, height: number, bead: number): Generator<void> {
  const rows = Array.from({ length: 2 * PANEL_WIDEST - 3 }, (_, row) => {
    const count = row < PANEL_WIDEST - 1 ? row + 2 : 2 * PANEL_WIDEST - row - 2
    const cells = Uint16Array.from({ length: count }, (_, cell) => {
      const fromSide = Math.min(cell, count - 1 - cell)
      return 1 + Math.min(PANEL.length - 1, Math.floor(fromSide))
    })
    return { start: PANEL_WIDEST - count, cells }
  })
  const chart = { stitch: 'brick', rows } as const
  const scene = chartScene({ chart, form: FORM, palette: PANEL, threadMm: 0.11 })
  const scale = (bead * 1.02) / scene.beadWidthMm
  const box = { left: -2, top: -2, right: scene.widthMm + 2, bottom: scene.heightMm + 2 }
  const spriteOf = sceneSprites(scene, scale)
  yield
  for (let at = 0; at < scene.xMm.length; at += 1) {
    spriteOf(at)
    yield
  }
  // With every bead at hand this is stamping alone.
  paintRegion(brush, scene, buildGrid(scene), {
    box,
    leftPx: Math.round((scene.widthMm * scale - width * 1.02) / 2),
    topPx: Math.round((scene.heightMm * scale - height * 1.04) / 2),
    scale,
  })
}

/** Small repeatable chance (mulberry32): the tray must look the same at every start. */
function mulberry(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
