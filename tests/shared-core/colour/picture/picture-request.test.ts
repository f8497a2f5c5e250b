import { describe, expect, it } from 'vitest'
import { checkPictureRequest } from '../../../../shared-core/colour/picture/picture-request.ts'
import { shoreRequest } from './shore-request.ts'

describe('checkPictureRequest', () => {
  const bead = { id: 'brine', hex: '#3a6a78' }
  it.each([
    ['picture-size', { picture: { rgba: new Uint8Array(3), width: 1, height: 1 } }],
    ['picture-crop', { crop: { x: 70, y: 0, width: 20, height: 10 } }],
    ['picture-crop', { crop: { x: 0, y: 0, width: Number.NaN, height: 10 } }],
    ['picture-cells', { cells: { x: [], y: [], pitchX: 1, pitchY: 1 } }],
    ['picture-cells', { cells: { x: [0], y: [Number.NaN], pitchX: 1, pitchY: 1 } }],
    ['picture-cells', { cells: { x: [0], y: [0], pitchX: 0, pitchY: 1 } }],
    ['picture-colours', { colours: { kind: 'free', count: 0 } }],
    ['picture-beads', { colours: { kind: 'beads', beads: [] } }],
    ['picture-bead-colour', { colours: { kind: 'beads', beads: [{ ...bead, hex: 'blue' }] } }],
    ['picture-background', { background: 'white' }],
    ['picture-smallest-patch', { smallestPatch: 0 }],
    ['picture-tone', { tone: { lightness: 0, contrast: Number.NaN, chroma: 1 } }],
  ] as const)('refuses by %s, saying what to do', (code, over) => {
    const checked = checkPictureRequest(shoreRequest(over))
    expect(!checked.ok && checked.error.map((refusal) => refusal.code)).toEqual([code])
  })
})
