import {
  cmykJpeg,
  gif,
  jpeg,
  movingPng,
  png,
  pngHeaderBytes,
} from '../shared-core/colour/picture/file/picture-bytes.ts'

export const NIGHT = [40, 52, 60, 255] as const
export const LAMP = [208, 138, 46, 255] as const

/** A lamp in the night, its lower right corner see-through. */
export const lamp = png({ width: 60, height: 40 }, (x, y) => {
  if (x > 40 && y > 28) return [0, 0, 0, 0]
  return Math.hypot(x - 28, y - 18) < 11 ? LAMP : NIGHT
})

const good = { width: 6, height: 4 }

/** Files that are no picture, or not a whole one, and what is said of each. */
export const badPictures = [
  ['empty.png', new Uint8Array(0), 'is empty'],
  ['diary.png', 'dear diary', 'is not a picture'],
  ['torn.png', lamp.slice(0, 90), 'ends before the picture does'],
  ['changed.png', lamp.map((byte, at) => (at === 60 ? byte ^ 0xff : byte)), 'is damaged'],
  ['hollow.png', pngHeaderBytes(good), 'is damaged'],
  ['torn.jpg', jpeg({ ...good, isTorn: true }), 'ends before the picture does'],
  ['hollow.jpg', jpeg({ ...good, channels: 4 }), 'is damaged'],
  ['torn.gif', gif(good, 2).slice(0, 40), 'ends before the picture does'],
  ['thread.png', pngHeaderBytes({ width: 1, height: 100_000 }), '1 by 100\u00a0000 pixels'],
  [
    'vast.png',
    pngHeaderBytes({ width: 20_000, height: 20_000 }),
    '20\u00a0000 by 20\u00a0000 pixels',
  ],
] as const

/** Whole pictures of unusual kinds, and what is said of how each was read. */
export const strangePictures = [
  ['pixel.png', png({ width: 1, height: 1 }, () => LAMP), 'It is a single pixel'],
  [
    'fine.png',
    png({ width: 8, height: 6, bits: 16 }, (x) => (x < 4 ? LAMP : NIGHT)),
    'Its 16-bit colours',
  ],
  ['print.jpg', cmykJpeg(), 'Its colours are meant for print (CMYK)'],
  ['moving.gif', gif({ width: 1, height: 1 }, 3), 'The picture moves'],
  ['moving.png', movingPng(good, [LAMP, NIGHT]), 'The picture moves'],
] as const
