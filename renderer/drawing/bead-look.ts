import type { BeadFamily, BeadFinish } from '../../shared-core/beads/bead-form.ts'

/** What decides how a bead is drawn, whatever its size. */
export type BeadLook = Readonly<{ hex: string; finish: BeadFinish; family: BeadFamily }>

/** Which way the hole runs, seen from the front. */
export type HoleAxis = 'vertical' | 'horizontal'

/** A box on a canvas, in its pixels. */
export type Box = Readonly<{ x: number; y: number; width: number; height: number }>

/** Either kind of 2D context: one on the page, or one that stands for a sprite. */
export type Brush = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D
