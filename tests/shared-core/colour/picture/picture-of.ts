import type { Picture } from '../../../../shared-core/colour/picture/picture.ts'
import { rgbOfHex } from '../../../../shared-core/colour/srgb.ts'

/** A picture from rows of `#rrggbb` or `#rrggbbaa`. */
export function pictureOf(rows: readonly (readonly string[])[]): Picture {
  const bytes = rows.flat().flatMap((hex) => {
    const rgb = rgbOfHex(hex.slice(0, 7))
    if (rgb === undefined) throw new Error(`no colour ${hex}`)
    return [rgb.r, rgb.g, rgb.b, hex.length > 7 ? Number.parseInt(hex.slice(7), 16) : 255]
  })
  return { rgba: Uint8Array.from(bytes), width: rows[0]?.length ?? 0, height: rows.length }
}
