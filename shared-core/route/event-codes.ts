import type { Direction, PassPurpose, RouteEvent } from './route.ts'

/** Directions by their code; `code ^ 1` is the opposite direction. */
export const DIRECTIONS: readonly Direction[] = ['up', 'down', 'left', 'right']
/** Code of `up`. */
export const UP = 0
/** Code of `down`. */
export const DOWN = 1
/** Code of `left`. */
export const LEFT = 2
/** Code of `right`. */
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
/** A pass that adds or ties a bead. */
export const STITCH = 0
/** A pass that seats a row's first two beads. */
export const LOCK = 1
/** A pass that steps up or turns to the next row. */
export const STEP_UP = 2
/** A pass on the way elsewhere. */
export const WEAVE = 3
/** A pass that only strengthens. */
export const REINFORCE = 4
/** A pass that weaves an end in. */
export const FINISH = 5

/** What a turn goes around, by its code. */
export const TURNS: readonly Extract<RouteEvent, { kind: 'turn' }>['around'][] = [
  'bead',
  'edge',
  'warp',
]
/** Round a turn bead. */
export const AROUND_BEAD = 0
/** Round a thread at the edge. */
export const AROUND_EDGE = 1
/** Round a warp. */
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
/** Beads are strung. */
export const PICK_UP = 0
/** A bead is passed. */
export const PASS = 1
/** A bridge is taken up. */
export const HOOK = 2
/** The thread turns round something. */
export const TURN = 3
/** Another part's bead is passed. */
export const JOIN = 4
/** The needle moves to the start tail. */
export const TAIL = 5
/** A row begins. */
export const ROW = 6
/** A finding is passed. */
export const FINDING = 7
/** A half hitch is tied. */
export const KNOT = 8
/** A length begins: `a` mm to cut, `b` mm of them stay in the work. */
export const ADD_THREAD = 9
/** An end is cut off. */
export const CUT = 10
/** A warp is hung: `a` mm to cut, `b` mm of them stay in the work. */
export const WARP = 11
