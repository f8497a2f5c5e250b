import type { BeadFinish } from '../../shared-core/beads/bead-form.ts'
import type { Shade } from './colour-shades.ts'

/** A stop across the bead, from the lit side (0) to the far side (1). */
type Stop = readonly [at: number, shade: Shade]

/** How a finish takes the one light from the upper left. */
export type FinishLight = Readonly<{
  /** Shades across the hole axis. */
  across: readonly Stop[]
  /** Strength of the bright streak, 0 for none. */
  streak: number
  /** Strength of the hole seen through the body, 0 for none. */
  core: number
  /** Strength of the light that gathers on the far side of clear glass. */
  glow: number
}>

export const finishLights: Readonly<Record<BeadFinish, FinishLight>> = {
  opaque: {
    across: [
      [0, { l: -0.09 }],
      [0.14, { l: 0.01 }],
      [0.33, { l: 0.09, c: 0.96 }],
      [0.56, { l: 0 }],
      [0.86, { l: -0.12 }],
      [1, { l: -0.17 }],
    ],
    streak: 0.28,
    core: 0,
    glow: 0,
  },
  matte: {
    across: [
      [0, { l: -0.03, c: 0.92 }],
      [0.36, { l: 0.05, c: 0.9 }],
      [0.7, { l: -0.02, c: 0.94 }],
      [1, { l: -0.1, c: 0.94 }],
    ],
    streak: 0,
    core: 0,
    glow: 0,
  },
  gloss: {
    across: [
      [0, { l: -0.13 }],
      [0.13, { l: 0 }],
      [0.3, { l: 0.12, c: 0.95 }],
      [0.52, { l: 0 }],
      [0.84, { l: -0.15 }],
      [0.95, { l: -0.2 }],
      [1, { l: -0.12 }],
    ],
    streak: 0.85,
    core: 0,
    glow: 0,
  },
  transparent: {
    across: [
      [0, { l: -0.18, c: 1.1 }],
      [0.12, { l: -0.03, c: 1.1 }],
      [0.4, { l: 0.05 }],
      [0.68, { l: 0.12, c: 1.05 }],
      [0.86, { l: 0.14, c: 1.1 }],
      [1, { l: -0.14, c: 1.1 }],
    ],
    streak: 0.75,
    core: 0.2,
    glow: 0.4,
  },
  lined: {
    across: [
      [0, { l: 0.08, c: 0.5 }],
      [0.22, { l: 0.24, c: 0.35 }],
      [0.31, { l: 0.02, c: 1.15 }],
      [0.5, { l: 0.03, c: 1.2 }],
      [0.69, { l: -0.06, c: 1.15 }],
      [0.78, { l: 0.2, c: 0.4 }],
      [1, { l: 0, c: 0.5 }],
    ],
    streak: 0.7,
    core: 0,
    glow: 0.15,
  },
  metallic: {
    across: [
      [0, { l: -0.2 }],
      [0.14, { l: -0.06 }],
      [0.28, { l: 0.24, c: 0.7 }],
      [0.4, { l: 0.05 }],
      [0.58, { l: -0.19 }],
      [0.76, { l: 0.06 }],
      [0.88, { l: -0.1 }],
      [1, { l: -0.27 }],
    ],
    streak: 0.55,
    core: 0,
    glow: 0,
  },
  iridescent: {
    across: [
      [0, { l: -0.1, h: -50 }],
      [0.2, { l: 0.06, c: 1.2, h: -28 }],
      [0.38, { l: 0.14, c: 1.1, h: 22 }],
      [0.58, { l: 0.02, c: 1.25, h: 64 }],
      [0.8, { l: -0.08, c: 1.2, h: 12 }],
      [1, { l: -0.16, h: -40 }],
    ],
    streak: 0.65,
    core: 0,
    glow: 0.12,
  },
}
