import * as fc from 'fast-check'
import { labOfHex } from '../../../../shared-core/colour/lab.ts'
import { writeEven } from '../../../../shared-core/colour/picture/even-space.ts'
import { hexOfRgb } from '../../../../shared-core/colour/srgb.ts'

/** CIE L*a*b* of colours, three numbers each. */
export const labsOf = (hexes: readonly string[]) =>
  Float64Array.from(
    hexes.flatMap((hex) => {
      const { l, a, b } = labOfHex(hex)
      return [l, a, b]
    }),
  )

/** The same in the even space. */
export const evensOf = (labs: Float64Array) => {
  const evens = new Float64Array(labs.length)
  writeEven(labs, evens, 0, labs.length / 3)
  return evens
}

/** Any colour a screen shows. */
export const anyHex = fc
  .record({ r: fc.nat(255), g: fc.nat(255), b: fc.nat(255) })
  .map((colour) => hexOfRgb(colour))
