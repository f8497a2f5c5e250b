import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { crc32 } from '../../../../../shared-core/colour/picture/file/crc32.ts'
import { readPictureHeader } from '../../../../../shared-core/colour/picture/file/picture-header.ts'
import {
  MAX_PICTURE_PIXELS,
  planPicture,
  WORKING_PIXELS,
} from '../../../../../shared-core/colour/picture/file/picture-plan.ts'
import { formatCount } from '../../../../../shared-core/units/format-number.ts'
import {
  chunk,
  gif,
  join,
  jpeg,
  moving,
  PNG_SIGNATURE,
  png,
  pngHeaderBytes,
  webp,
} from './picture-bytes.ts'

const fileName = 'tide.png'
const header = (bytes: Uint8Array) => {
  const read = readPictureHeader(bytes, { fileName })
  return read.ok ? read.value : read.error.code
}
const size = { width: 7, height: 5 }
const whole = { ...size, bits: 8, isAnimated: false, isCmyk: false }

describe('crc32', () => {
  it('agrees with the check value of its standard', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926)
  })
})

describe('readPictureHeader', () => {
  it.each([
    ['a PNG', pngHeaderBytes(size), { ...whole, format: 'png' }],
    ['a 16-bit PNG', pngHeaderBytes({ ...size, bits: 16 }), { ...whole, format: 'png', bits: 16 }],
    [
      'a moving PNG',
      pngHeaderBytes(size, [moving(3)]),
      { ...whole, format: 'png', isAnimated: true },
    ],
    [
      'a PNG of one picture that could move',
      pngHeaderBytes(size, [moving(1)]),
      { ...whole, format: 'png' },
    ],
    ['a JPEG', jpeg(size), { ...whole, format: 'jpeg' }],
    [
      'a JPEG for print',
      jpeg({ ...size, channels: 4 }),
      { ...whole, format: 'jpeg', isCmyk: true },
    ],
    ['a grey JPEG', jpeg({ ...size, channels: 1 }), { ...whole, format: 'jpeg' }],
    ['a GIF', gif(size, 1), { ...whole, format: 'gif' }],
    ['a moving GIF', gif(size, 4), { ...whole, format: 'gif', isAnimated: true }],
    ['an extended WebP', webp('VP8X', size), { ...whole, format: 'webp' }],
    [
      'a moving WebP',
      webp('VP8X', { ...size, isMoving: true }),
      { ...whole, format: 'webp', isAnimated: true },
    ],
    ['a lossless WebP', webp('VP8L', size), { ...whole, format: 'webp' }],
    ['a lossy WebP', webp('VP8 ', size), { ...whole, format: 'webp' }],
  ])('reads %s', (_, bytes, expected) => {
    expect(header(bytes)).toEqual(expected)
  })

  it.each([
    ['an empty file', new Uint8Array(0), 'picture-empty'],
    ['a text', new TextEncoder().encode('dear diary'), 'picture-unknown'],
    [
      'a PNG without pixels',
      join(
        PNG_SIGNATURE,
        chunk('IHDR', [0, 0, 0, 1, 0, 0, 0, 1, 8, 6, 0, 0, 0]),
        chunk('IEND', []),
      ),
      'picture-broken',
    ],
    [
      'a PNG that begins with another chunk',
      join(PNG_SIGNATURE, chunk('IDAT', [1])),
      'picture-broken',
    ],
    ['a PNG without width', pngHeaderBytes({ width: 0, height: 5 }), 'picture-broken'],
    ['a JPEG that ends in its scan', jpeg({ ...size, isTorn: true }), 'picture-torn'],
    [
      'a JPEG with stray bytes between markers',
      join(jpeg(size).slice(0, 2), [0xff, 0xe0, 0, 2, 7, 7, 7, 7, 7, 7]),
      'picture-broken',
    ],
    [
      'a WebP of an unknown kind',
      join(webp('VP8L', size).slice(0, 20), new Uint8Array(16)),
      'picture-broken',
    ],
  ])('refuses %s', (_, bytes, code) => {
    expect(header(bytes)).toBe(code)
  })

  it('finds every file that is cut short', () => {
    const files = [pngHeaderBytes(size), gif(size, 2), jpeg(size), webp('VP8X', size)]
    for (const bytes of files) {
      for (let length = 14; length < bytes.length; length += 1) {
        expect(header(bytes.slice(0, length)), `${length} of ${bytes.length}`).toBe('picture-torn')
      }
    }
  })

  it('finds any changed byte of a PNG', () => {
    const bytes = png(size, (x, y) => [x * 30, y * 40, 90, 255])
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: bytes.length - 1 }),
        fc.integer({ min: 1, max: 255 }),
        (at, change) => {
          const broken = bytes.slice()
          broken[at] = (broken[at] ?? 0) ^ change
          expect(header(broken)).toMatch(/^picture-(broken|torn)$/)
        },
      ),
    )
  })

  it('never throws, whatever bytes come', () => {
    const begins = [PNG_SIGNATURE, [0xff, 0xd8, 0xff], [0x47, 0x49, 0x46, 0x38]]
    fc.assert(
      fc.property(fc.constantFrom(...begins), fc.uint8Array({ maxLength: 200 }), (begin, rest) => {
        expect(header(join(begin, rest))).toBeDefined()
      }),
    )
  })
})

describe('planPicture', () => {
  const plan = (
    part: Readonly<{
      width: number
      height: number
      isAnimated?: boolean
      isCmyk?: boolean
      bits?: number
    }>,
  ) => planPicture({ ...whole, format: 'png', ...part }, { fileName })

  it('takes an everyday picture as it is', () => {
    expect(plan({ width: 4_000, height: 3_000 })).toEqual({ ok: true, value: { notes: [] } })
  })

  it('makes a giant smaller on the way in and says so', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 32_000 }),
        fc.integer({ min: 1, max: 32_000 }),
        (width, height) => {
          fc.pre(width * height > WORKING_PIXELS && width * height <= MAX_PICTURE_PIXELS)
          const made = plan({ width, height })
          if (!made.ok) throw new Error(made.error.message)
          const { resizeWidth = 0, notes } = made.value
          expect(resizeWidth).toBeGreaterThan(0)
          expect(resizeWidth * (resizeWidth * (height / width))).toBeLessThanOrEqual(
            WORKING_PIXELS * 1.001,
          )
          expect(notes[0]).toContain(`${formatCount(width)} by ${formatCount(height)}`)
        },
      ),
    )
  })

  it.each([[{ width: 1, height: 100_000 }], [{ width: 12_000, height: 9_000 }]])(
    'refuses %o and names the limits',
    (huge) => {
      expect(plan(huge)).toMatchObject({
        ok: false,
        error: {
          code: 'picture-too-large',
          next: expect.stringContaining('32\u00a0000 pixels a side'),
        },
      })
    },
  )

  it('tells what may surprise', () => {
    const told = (part: Parameters<typeof plan>[0]) => {
      const made = plan(part)
      return made.ok ? made.value.notes.join(' ') : ''
    }
    expect(told({ ...size, isAnimated: true })).toContain('only its first picture')
    expect(told({ ...size, isCmyk: true })).toContain('CMYK')
    expect(told({ ...size, bits: 16 })).toContain('16-bit')
    expect(told({ width: 1, height: 1 })).toContain('single pixel')
  })
})
