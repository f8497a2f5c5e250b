import { deflateSync } from 'node:zlib'
import { crc32 } from '../../../../../shared-core/colour/picture/file/crc32.ts'

// Picture files made byte by byte, as their standards say.

type Rgba = readonly [r: number, g: number, b: number, a: number]

const text = (value: string) => Uint8Array.from(value, (letter) => letter.charCodeAt(0))
const u32 = (value: number) => [
  value >>> 24,
  (value >>> 16) & 255,
  (value >>> 8) & 255,
  value & 255,
]
const u16 = (value: number) => [value >> 8, value & 255]
const le16 = (value: number) => [value & 255, value >> 8]
const le24 = (value: number) => [value & 255, (value >> 8) & 255, value >> 16]

export function join(...parts: readonly ArrayLike<number>[]): Uint8Array {
  return Uint8Array.from(parts.flatMap((part) => Array.from(part)))
}

/** A PNG chunk with its length and check. */
export function chunk(name: string, data: ArrayLike<number>): Uint8Array {
  const named = join(text(name), data)
  return join(u32(data.length), named, u32(crc32(named)))
}

export const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]

/** A PNG of a size and depth; its pixels need not be there for the header to be read. */
export function pngHeaderBytes(
  { width, height, bits = 8 }: Readonly<{ width: number; height: number; bits?: number }>,
  extra: readonly Uint8Array[] = [],
): Uint8Array {
  const header = chunk('IHDR', [...u32(width), ...u32(height), bits, 6, 0, 0, 0])
  const pixels = chunk('IDAT', [0x78, 0x9c, 3, 0, 0, 0, 0, 1])
  return join(PNG_SIGNATURE, header, ...extra, pixels, chunk('IEND', []))
}

/** Says that a PNG holds so many pictures. */
export const moving = (pictures: number) => chunk('acTL', [...u32(pictures), ...u32(0)])

/** A whole PNG, pixel by pixel; of 16 bits a channel when asked. */
export function png(
  { width, height, bits = 8 }: Readonly<{ width: number; height: number; bits?: 8 | 16 }>,
  pixel: (x: number, y: number) => Rgba,
): Uint8Array {
  const raw: number[] = []
  for (let y = 0; y < height; y += 1) {
    raw.push(0)
    for (let x = 0; x < width; x += 1) {
      for (const byte of pixel(x, y)) raw.push(...(bits === 16 ? [byte, byte] : [byte]))
    }
  }
  const header = chunk('IHDR', [...u32(width), ...u32(height), bits, 6, 0, 0, 0])
  const pixels = chunk('IDAT', deflateSync(Uint8Array.from(raw)))
  return join(PNG_SIGNATURE, header, pixels, chunk('IEND', []))
}

/** A whole PNG of two pictures, each of one colour. */
export function movingPng(
  { width, height }: Readonly<{ width: number; height: number }>,
  colours: readonly [Rgba, Rgba],
): Uint8Array {
  const [first, second] = colours.map((colour) => pixelsOf(png({ width, height }, () => colour)))
  const frame = (order: number) =>
    chunk('fcTL', [
      ...u32(order),
      ...u32(width),
      ...u32(height),
      ...u32(0),
      ...u32(0),
      0,
      1,
      0,
      5,
      0,
      0,
    ])
  const header = chunk('IHDR', [...u32(width), ...u32(height), 8, 6, 0, 0, 0])
  return join(
    PNG_SIGNATURE,
    header,
    moving(2),
    frame(0),
    chunk('IDAT', first ?? []),
    frame(1),
    chunk('fdAT', [...u32(2), ...(second ?? [])]),
    chunk('IEND', []),
  )
}

/** The packed pixels of a PNG made here: what its one IDAT holds. */
function pixelsOf(bytes: Uint8Array): Uint8Array {
  return bytes.slice(PNG_SIGNATURE.length + 25 + 8, bytes.length - 12 - 4)
}

/** A part of a JPEG: its marker, its length and what it holds. */
function segment(marker: number, data: readonly number[]): readonly number[] {
  return [0xff, marker, ...u16(data.length + 2), ...data]
}

/**
 * A whole CMYK JPEG of 8 by 8 pixels, all half tones: every coefficient is nought, so each of the four
 * components is two bits, the shortest codes of tables that have one code each.
 */
export function cmykJpeg(): Uint8Array {
  const oneCode = [1, ...Array(15).fill(0), 0]
  const parts = [1, 2, 3, 4]
  return join(
    [0xff, 0xd8],
    segment(0xee, [...text('Adobe'), 0, 100, 0, 0, 0, 0, 0]),
    segment(0xdb, [0, ...Array(64).fill(1)]),
    segment(0xc0, [8, ...u16(8), ...u16(8), 4, ...parts.flatMap((id) => [id, 0x11, 0])]),
    segment(0xc4, [0x00, ...oneCode]),
    segment(0xc4, [0x10, ...oneCode]),
    segment(0xda, [4, ...parts.flatMap((id) => [id, 0]), 0, 63, 0]),
    [0x00, 0xff, 0xd9],
  )
}

type JpegMade = Readonly<{ width: number; height: number; channels?: number; isTorn?: boolean }>

/** A JPEG's markers around a few bytes of scan. */
export function jpeg({ width, height, channels = 3, isTorn = false }: JpegMade): Uint8Array {
  const parts = Array.from({ length: channels }, (_, at) => [at + 1, 0x11, 0])
  const frame = [8, ...u16(height), ...u16(width), channels, ...parts.flat()]
  const scan = [channels, ...parts.flatMap(([id = 0]) => [id, 0]), 0, 63, 0]
  // A thumbnail of its own stands before the frame, with an end marker that is not the picture's.
  const thumbnail = segment(0xe1, [1, 2, 0xff, 0xd9])
  const start = [0xff, 0xd8, ...thumbnail, ...segment(0xc4, [0, 1]), ...segment(0xc2, frame)]
  const pixels = [...segment(0xda, scan), 0x12, 0xff, 0x00, 0x34]
  return join(start, pixels, isTorn ? [] : [0xff, 0xd9])
}

/** A GIF of so many pictures. */
export function gif(
  { width, height }: Readonly<{ width: number; height: number }>,
  pictures: number,
): Uint8Array {
  const table = [0, 0, 0, 255, 255, 255]
  const control = [0x21, 0xf9, 4, 0, 10, 0, 0, 0]
  const image = [0x2c, 0, 0, 0, 0, ...le16(width), ...le16(height), 0, 2, 2, 0x4c, 0x01, 0]
  const frames = Array.from({ length: pictures }, () => [...control, ...image]).flat()
  const screen = [...le16(width), ...le16(height), 0x80, 0, 0]
  return join(text('GIF89a'), screen, table, frames, [0x3b])
}

/** A WebP: extended and moving or not, or lossless, or lossy. */
export function webp(
  kind: 'VP8X' | 'VP8L' | 'VP8 ',
  {
    width,
    height,
    isMoving = false,
  }: Readonly<{ width: number; height: number; isMoving?: boolean }>,
): Uint8Array {
  const packed = (width - 1) | ((height - 1) << 14)
  const data = {
    VP8X: [isMoving ? 2 : 0, 0, 0, 0, ...le24(width - 1), ...le24(height - 1)],
    VP8L: [
      0x2f,
      packed & 255,
      (packed >> 8) & 255,
      (packed >> 16) & 255,
      packed >>> 24,
      0,
      0,
      0,
      0,
      0,
    ],
    'VP8 ': [0, 0, 0, 0x9d, 0x01, 0x2a, ...le16(width), ...le16(height)],
  }[kind]
  const body = join(text(kind), [...le24(data.length), 0], data, [0, 0])
  const size = 4 + body.length
  return join(text('RIFF'), [...le24(size), 0], text('WEBP'), body)
}
