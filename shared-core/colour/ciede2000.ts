import type { Lab } from './lab.ts'

const POW_25_7 = 25 ** 7
const DEGREE = Math.PI / 180
const COS_30 = Math.cos(30 * DEGREE)
const SIN_30 = 0.5
const COS_6 = Math.cos(6 * DEGREE)
const SIN_6 = Math.sin(6 * DEGREE)
const COS_63 = Math.cos(63 * DEGREE)
const COS_275 = Math.cos(275 * DEGREE)
const SIN_275 = Math.sin(275 * DEGREE)
const SIN_63 = Math.sin(63 * DEGREE)

/**
 * The CIEDE2000 difference of two Lab colours given as six numbers; kL = kC = kH = 1.
 *
 * The one colour difference of the whole program. Positional, because pictures call it by the
 * million. Hues enter through their unit vectors: the mean hue is the bisector of the smaller angle,
 * and cosines of its multiples follow without trigonometry.
 *
 * @source Sharma, Wu and Dalal, Color Research and Application 30 (2005).
 */
export function deltaE2000(
  l1: number,
  a1: number,
  b1: number,
  l2: number,
  a2: number,
  b2: number,
): number {
  const meanChroma = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2
  const stretch = 1.5 - 0.5 * Math.sqrt(chromaShare(meanChroma))
  const p1 = stretch * a1
  const p2 = stretch * a2
  const c1 = Math.sqrt(p1 * p1 + b1 * b1)
  const c2 = Math.sqrt(p2 * p2 + b2 * b2)
  const mean = (c1 + c2) / 2

  const dot = p1 * p2 + b1 * b2
  const cross = p1 * b2 - p2 * b1
  // The mean hue is the bisector of both. Where a chroma is 0 it has none, and no term needs it.
  let cos = p1 * c2 + p2 * c1
  let sin = b1 * c2 + b2 * c1
  if (cross === 0 && dot < 0) {
    // Opposite hues have no bisector: the mean of the two angles counted from 0 to 360 is taken.
    const hue = (positiveHue(p1, b1) + positiveHue(p2, b2)) / 2
    cos = Math.cos(hue)
    sin = Math.sin(hue)
  }
  const length = Math.sqrt(cos * cos + sin * sin)
  if (length > 0) {
    cos /= length
    sin /= length
  } else cos = 1

  const c1c2 = c1 * c2
  // 2 sqrt(C1 C2) sin(dh / 2), written so that near hues do not cancel.
  // A chroma too small to be squared counts as 0: what is left of dot and cross is rounding.
  const dH2 = c1c2 === 0 ? 0 : dot > 0 ? (2 * cross * cross) / (c1c2 + dot) : 2 * (c1c2 - dot)
  const dH = (cross < 0 ? -1 : 1) * Math.sqrt(Math.max(0, dH2))

  const fromMiddle = ((l1 + l2) / 2 - 50) ** 2
  const tL = (l2 - l1) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle))
  const tC = (c2 - c1) / (1 + 0.045 * mean)
  const tH = dH / (1 + 0.015 * mean * hueWeight(cos, sin))
  const rotation = -2 * Math.sqrt(chromaShare(mean)) * blueTurn(cos, sin)
  return Math.sqrt(Math.max(0, tL * tL + tC * tC + tH * tH + rotation * tC * tH))
}

function chromaShare(chroma: number): number {
  const squared = chroma * chroma
  const seventh = squared * squared * squared * chroma
  return seventh / (seventh + POW_25_7)
}

function positiveHue(a: number, b: number): number {
  const hue = Math.atan2(b, a)
  return hue < 0 ? hue + 2 * Math.PI : hue
}

/** T: 1 - 0.17 cos(h - 30) + 0.24 cos 2h + 0.32 cos(3h + 6) - 0.20 cos(4h - 63). */
function hueWeight(cos: number, sin: number): number {
  const cos2 = cos * cos - sin * sin
  const sin2 = 2 * sin * cos
  const cos3 = cos * cos2 - sin * sin2
  const sin3 = sin * cos2 + cos * sin2
  const cos4 = cos2 * cos2 - sin2 * sin2
  const sin4 = 2 * sin2 * cos2
  return (
    1 -
    0.17 * (cos * COS_30 + sin * SIN_30) +
    0.24 * cos2 +
    0.32 * (cos3 * COS_6 - sin3 * SIN_6) -
    0.2 * (cos4 * COS_63 + sin4 * SIN_63)
  )
}

/** sin of twice 30 exp(-((h - 275) / 25)^2) degrees. */
function blueTurn(cos: number, sin: number): number {
  // More than 120 degrees from blue it comes to less than 2e-10: not worth an arc tangent.
  if (cos * COS_275 + sin * SIN_275 < -0.5) return 0
  const off = positiveHue(cos, sin) / DEGREE - 275
  return Math.sin(60 * DEGREE * Math.exp(-(off * off) / 625))
}

/** The CIEDE2000 difference of two Lab colours: about 1 is just seen side by side. */
export function ciede2000(x: Lab, y: Lab): number {
  return deltaE2000(x.l, x.a, x.b, y.l, y.a, y.b)
}
