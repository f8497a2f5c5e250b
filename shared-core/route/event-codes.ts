import type { Direction, PassPurpose, RouteEvent } from './route.ts'

/** Directions by their code; `code ^ 1` is the opposite direction. */
export const DIRECTIONS: readonly Direction[] = ['up', 'down', 'left', 'right']
export const UP = 0
export const DOWN = 1
export const LEFT = 2
export const RIGHT = 3

/** Pass purposes by their code. */
export const PURPOSES: readonly PassPurpose[] = [
  'stitch',
  'lock',
  'step-up',
  'weave',
  'reinforce',
  'finish',
]
export const STITCH = 0
export const LOCK = 1
export const STEP_UP = 2
export const WEAVE = 3
export const REINFORCE = 4
export const FINISH = 5

/** What a turn goes around, by its code. */
export const TURNS: readonly Extract<RouteEvent, { kind: 'turn' }>['around'][] = [
  'bead',
  'edge',
  'warp',
]
export const AROUND_BEAD = 0
export const AROUND_EDGE = 1
export const AROUND_WARP = 2

/** Event kinds by their code. */
export const KINDS: readonly RouteEvent['kind'][] = [
  'pick-up',
  'pass',
  'hook',
  'turn',
  'join',
  'tail',
  'row',
  'finding',
  'knot',
  'add-thread',
  'cut',
  'warp',
]
export const PICK_UP = 0
export const PASS = 1
export const HOOK = 2
export const TURN = 3
export const JOIN = 4
export const TAIL = 5
export const ROW = 6
export const FINDING = 7
export const KNOT = 8
export const ADD_THREAD = 9
export const CUT = 10
export const WARP = 11
