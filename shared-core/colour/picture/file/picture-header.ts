import type { Refusal } from '../../../refusal.ts'
import { err, ok, type Result } from '../../../result.ts'
import { readGifHeader } from './gif-header.ts'
import { readJpegHeader } from './jpeg-header.ts'
import { readPngHeader } from './png-header.ts'
import { readWebpHeader } from './webp-header.ts'

/** The kinds of picture file that are read. */
export type PictureFormat = 'png' | 'jpeg' | 'gif' | 'webp'

/**
 * What a picture file says of itself before it is decoded.
 *
 * `width` and `height` in pixels as stored; `bits` of each channel; `isAnimated` when it holds more
 * than one picture; `isCmyk` when its colours are meant for print.
 */
export type PictureHeader = Readonly<{
  format: PictureFormat
  width: number
  height: number
  bits: number
  isAnimated: boolean
  isCmyk: boolean
}>

/** What is wrong with a picture file: it ends too soon, or its parts do not fit together. */
export type PictureFileFault = 'torn' | 'broken'

/** What the reader of one format finds. */
export type HeaderReading = Result<PictureHeader, PictureFileFault>

/**
 * Reads a picture file's header and checks that the file is whole.
 *
 * By the file's own bytes, whatever its name says. PNG chunks are checked by their CRC; a JPEG must
 * reach its end marker, a GIF its trailer, a WebP its stated length. The pixels are not decoded.
 *
 * @returns The header; or `picture-empty`, `picture-unknown` for anything that is no such picture,
 *   `picture-torn` for a file that ends too soon, `picture-broken` for one whose parts do not fit.
 * @source PNG (Third Edition) 5; ITU T.81 annex B; GIF89a; RFC 9649 (WebP).
 */
export function readPictureHeader(
  bytes: Uint8Array,
  { fileName }: Readonly<{ fileName: string }>,
): Result<PictureHeader, Refusal> {
  if (bytes.length === 0) return err(refusals.empty(fileName))
  const read = readerOf(bytes)
  if (read === undefined) return err(refusals.unknown(fileName))
  const header = read(bytes)
  if (!header.ok) return err(refusals[header.error](fileName))
  const { width, height } = header.value
  return width > 0 && height > 0 ? ok(header.value) : err(refusals.broken(fileName))
}

type Reader = (bytes: Uint8Array) => HeaderReading

const READERS: readonly Readonly<{ begins: readonly (number | undefined)[]; read: Reader }>[] = [
  { begins: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], read: readPngHeader },
  { begins: [0xff, 0xd8, 0xff], read: readJpegHeader },
  { begins: [0x47, 0x49, 0x46, 0x38], read: readGifHeader },
  {
    begins: [0x52, 0x49, 0x46, 0x46, ...Array(4).fill(undefined), 0x57, 0x45, 0x42, 0x50],
    read: readWebpHeader,
  },
]

function readerOf(bytes: Uint8Array): Reader | undefined {
  return READERS.find(({ begins }) =>
    begins.every((byte, at) => byte === undefined || bytes[at] === byte),
  )?.read
}

const refusals = {
  empty: (fileName: string): Refusal => ({
    code: 'picture-empty',
    message: `${fileName} is empty.`,
    next: 'Choose the picture again where it was saved, or export it once more.',
  }),
  unknown: (fileName: string): Refusal => ({
    code: 'picture-unknown',
    message: `${fileName} is not a picture that can be read here.`,
    next: 'Choose a PNG, JPEG, WebP or GIF file.',
  }),
  torn: (fileName: string): Refusal => ({
    code: 'picture-torn',
    message: `${fileName} ends before the picture does: part of the file is missing.`,
    next: 'Copy or export it again, then choose it once more.',
  }),
  broken: (fileName: string): Refusal => ({
    code: 'picture-broken',
    message: `${fileName} is damaged: its parts do not fit together.`,
    next: 'Open it in another program and save it anew, then choose it once more.',
  }),
} as const

/** The refusal of a picture whose header is sound but whose pixels could not be decoded. */
export function undecodable(fileName: string): Refusal {
  return refusals.broken(fileName)
}
