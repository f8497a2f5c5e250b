import type { SlackKind } from '../route/thread-slack.ts'
import { estimated, type Spread } from '../units/spread.ts'

/** How fast a workshop works, in seconds: once a unit, for each bead by stitch, for each row, and to finish. */
export type Pace = Readonly<{
  setUpS: Spread
  perBeadS: Readonly<Record<SlackKind, Spread>>
  perRowS: Spread
  finishingS: Spread
}>

/** Seconds a bead from beads a minute: slow, usual, fast. */
function beadsPerMinute(slow: number, usual: number, fast: number): Spread {
  return estimated(60 / fast, 60 / usual, 60 / slow)
}

/**
 * The pace to start from until the workshop's own sessions are known.
 *
 * @source Working defaults of the trade for practised hands, known to about 40 %: brick and peyote 6
 *   to 10 beads a minute, square 4 to 6, herringbone 8 to 12, right-angle weave 5 to 8, loom 12 to
 *   20, ladder 4 to 6, fringe 15 to 25; finishing a pair 15 to 25 min. Set-up and turning: chosen by us.
 */
export const referencePace: Pace = {
  setUpS: estimated(180, 420, 900),
  perBeadS: {
    brick: beadsPerMinute(6, 8, 10),
    peyote: beadsPerMinute(6, 8, 10),
    square: beadsPerMinute(4, 5, 6),
    loom: beadsPerMinute(12, 16, 20),
    ladder: beadsPerMinute(4, 5, 6),
    herringbone: beadsPerMinute(8, 10, 12),
    'right-angle-weave': beadsPerMinute(5, 6.5, 8),
    strand: beadsPerMinute(15, 20, 25),
  },
  perRowS: estimated(3, 8, 15),
  finishingS: estimated(900, 1200, 1500),
}
