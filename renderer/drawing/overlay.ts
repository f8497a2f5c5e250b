import type { BeadGrid, BoxMm } from './bead-grid.ts'
import type { BeadScene } from './bead-scene.ts'
import type { View } from './view.ts'

/** Colours of the page's theme, for what is drawn over beads. */
export type OverlayColours = Readonly<{
  ink: string
  paper: string
  tray: string
  tide: string
  lamp: string
  bad: string
}>

/** What a layer over the beads draws with. Coordinates are pixels of the canvas; `x` and `y` turn mm into them. */
export type OverlayPaint = Readonly<{
  brush: CanvasRenderingContext2D
  scene: BeadScene
  grid: BeadGrid
  view: View
  /** What is seen, in mm: nothing outside needs drawing. */
  seen: BoxMm
  x: (mm: number) => number
  y: (mm: number) => number
  /** Pixels of the canvas in one CSS pixel: line widths are multiplied by it. */
  ratio: number
  colours: OverlayColours
}>

/** A layer drawn over the beads at every change of view. Keep its identity while it shows the same. */
export type OverlayLayer = (paint: OverlayPaint) => void

const NAMES = ['ink', 'paper', 'tray', 'tide', 'lamp', 'bad'] as const

/** Reads the theme's colours as the page has them now. */
export function readOverlayColours(element: HTMLElement): OverlayColours {
  const probe = document.createElement('span')
  element.append(probe)
  const entries = NAMES.map((name) => {
    probe.style.color = `var(--${name === 'bad' ? 'bad-ink' : name})`
    return [name, getComputedStyle(probe).color] as const
  })
  probe.remove()
  return Object.fromEntries(entries) as OverlayColours
}
