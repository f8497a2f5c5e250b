import type { StitchKind } from './chart.ts'

const NAMES: Readonly<Record<StitchKind, string>> = {
  brick: 'brick stitch',
  peyote: 'peyote',
  square: 'square stitch',
  loom: 'loom work',
  ladder: 'ladder stitch',
  herringbone: 'herringbone',
  'right-angle-weave': 'right-angle weave',
}

const SIGNS: readonly (readonly [StitchKind, RegExp])[] = [
  ['right-angle-weave', /\bright[- ]angle[- ]weave\b/i],
  ['brick', /\bbrick\b/i],
  ['peyote', /\bpeyote\b/i],
  ['square', /\bsquare\b/i],
  ['loom', /\bloom(work)?\b/i],
  ['ladder', /\bladder\b/i],
  ['herringbone', /\bherringbone\b/i],
]

/** A stitch's trade name within a sentence, such as `brick stitch` or `peyote`. */
export function stitchName(stitch: StitchKind): string {
  return NAMES[stitch]
}

/** The stitch a text names first, or `undefined` when it names none. */
export function findStitchName(text: string): StitchKind | undefined {
  let found: StitchKind | undefined
  let place = text.length
  for (const [stitch, sign] of SIGNS) {
    const at = text.search(sign)
    if (at < 0 || at >= place) continue
    found = stitch
    place = at
  }
  return found
}
