/** A place on the page and the way the thread goes there, radians clockwise from upwards. */
export type ThreadPlace = Readonly<{ xMm: number; yMm: number; turnRad: number }>

/**
 * Places along a loop of thread that bulges up from one point to another on the same level (or down
 * for `side` 1): an arc of a circle as long as the thread.
 *
 * @param alongMm - Distances along the thread.
 */
export function hangOnArc(
  span: Readonly<{ fromX: number; toX: number; yMm: number; lengthMm: number; side: -1 | 1 }>,
  alongMm: readonly number[],
): readonly ThreadPlace[] {
  const { fromX, toX, yMm, lengthMm, side } = span
  const chord = Math.max(1e-3, toX - fromX)
  if (lengthMm <= chord) {
    return alongMm.map((mm) => ({ xMm: fromX + mm, yMm, turnRad: Math.PI / 2 }))
  }
  const angle = angleOfArc(chord / lengthMm)
  const radius = lengthMm / angle
  const middleX = (fromX + toX) / 2
  // The circle's middle lies beyond the chord, on the side it bulges to once the arc is past a half.
  const middleY = yMm - side * radius * Math.cos(angle / 2)
  return alongMm.map((mm) => {
    const turn = mm / radius - angle / 2
    return {
      xMm: middleX + radius * Math.sin(turn),
      yMm: middleY + side * radius * Math.cos(turn),
      turnRad: Math.PI / 2 - side * turn,
    }
  })
}

/** The angle whose chord is this share of its arc, found by halving: sin(a/2) / (a/2) falls from 1 to 0. */
function angleOfArc(share: number): number {
  let [low, high] = [1e-6, 2 * Math.PI]
  for (let halving = 0; halving < 40; halving += 1) {
    const middle = (low + high) / 2
    if (Math.sin(middle / 2) / (middle / 2) > share) low = middle
    else high = middle
  }
  return (low + high) / 2
}
