import type { BeadFamily } from '../../shared-core/beads/bead-form.ts'
import type { Box, HoleAxis } from './bead-look.ts'

/** Share of the shorter side that a form's corners are rounded by. */
const ROUNDING: Readonly<Record<Exclude<BeadFamily, 'drop' | 'faceted'>, number>> = {
  cylinder: 0.2,
  rocaille: 0.46,
  bugle: 0.1,
  'two-hole': 0.3,
  cube: 0.12,
}

/** The outline of a bead that fills a box, seen from the front. */
export function beadOutline(family: BeadFamily, box: Box, axis: HoleAxis): Path2D {
  switch (family) {
    case 'drop':
      return dropOutline(box)
    case 'faceted':
      return facetedOutline(box, axis)
    default:
      return roundedOutline(box, ROUNDING[family])
  }
}

function roundedOutline({ x, y, width, height }: Box, rounding: number): Path2D {
  const path = new Path2D()
  path.roundRect(x, y, width, height, rounding * Math.min(width, height))
  return path
}

function dropOutline({ x, y, width, height }: Box): Path2D {
  const path = new Path2D()
  const middle = x + width / 2
  const belly = y + height * 0.64
  path.moveTo(middle, y)
  path.bezierCurveTo(middle + width * 0.2, y, x + width, y + height * 0.34, x + width, belly)
  path.bezierCurveTo(x + width, y + height * 1.12, x, y + height * 1.12, x, belly)
  path.bezierCurveTo(x, y + height * 0.34, middle - width * 0.2, y, middle, y)
  path.closePath()
  return path
}

function facetedOutline({ x, y, width, height }: Box, axis: HoleAxis): Path2D {
  const path = new Path2D()
  const cutX = width * (axis === 'vertical' ? 0.26 : 0.18)
  const cutY = height * (axis === 'vertical' ? 0.18 : 0.26)
  path.moveTo(x + cutX, y)
  path.lineTo(x + width - cutX, y)
  path.lineTo(x + width, y + cutY)
  path.lineTo(x + width, y + height - cutY)
  path.lineTo(x + width - cutX, y + height)
  path.lineTo(x + cutX, y + height)
  path.lineTo(x, y + height - cutY)
  path.lineTo(x, y + cutY)
  path.closePath()
  return path
}
