import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Picture } from '../../../../shared-core/colour/picture/picture.ts'
import type { PictureRequest } from '../../../../shared-core/colour/picture/picture-request.ts'
import { runSteps } from '../../../../shared-core/colour/picture/run-steps.ts'
import { sampleCells } from '../../../../shared-core/colour/picture/sample-cells.ts'
import { paintPicture } from '../../../fixtures/picture-generator.ts'
import { brick, peyote, square } from './layouts.ts'
import { pictureOf } from './picture-of.ts'

const checkerboard = pictureOf([
  ['#000000', '#ffffff'],
  ['#ffffff', '#000000'],
])

function lightOf(picture: Picture, cells = square(1, 1), fit: PictureRequest['fit'] = 'stretch') {
  const crop = { x: 0, y: 0, width: picture.width, height: picture.height }
  const outcome = runSteps(sampleCells(picture, crop, cells, fit))
  if (outcome.kind === 'cancelled') throw new Error('nobody cancelled')
  return { light: [...outcome.value.light], cover: [...outcome.value.cover] }
}

describe('sampleCells', () => {
  it('averages light, not bytes: black and white make half the light', () => {
    expect(lightOf(checkerboard)).toEqual({ light: [0.5, 0.5, 0.5], cover: [1] })
  })

  it('counts a pixel on the border by the share inside', () => {
    const stripes = pictureOf([['#ff0000', '#000000', '#0000ff']])
    const { light } = lightOf(stripes, square(2, 1))
    const third = 1 / 3
    for (const [i, expected] of [2 * third, 0, 0, 0, 0, 2 * third].entries()) {
      expect(light[i]).toBeCloseTo(expected, 12)
    }
  })

  it('counts see-through pixels by their alpha', () => {
    const { light, cover } = lightOf(pictureOf([['#ff0000ff', '#00ff0033']]))
    expect(light[0]).toBeCloseTo(1 / 1.2, 12)
    expect(light[1]).toBeCloseTo(0.2 / 1.2, 12)
    expect(cover[0]).toBeCloseTo(0.6, 12)
  })

  it('leaves cells outside a contained picture uncovered, and fills all when it covers', () => {
    const wide = pictureOf([['#ff0000', '#ff0000', '#ff0000']])
    expect(lightOf(wide, square(3, 3), 'contain').cover).toEqual([0, 0, 0, 1, 1, 1, 0, 0, 0])
    const { cover } = lightOf(wide, square(3, 3), 'cover')
    for (const share of cover) expect(share).toBeCloseTo(1, 12)
  })

  it.each([
    ['square', square(7, 5)],
    ['brick', brick(7, 5)],
    ['peyote', peyote(7, 5)],
  ])('gives every %s cell of a flat picture its colour, whole', (_, cells) => {
    const flat = pictureOf([['#c08040', '#c08040', '#c08040']])
    const { light, cover } = lightOf(flat, cells)
    const [r = 0] = lightOf(flat).light
    for (let cell = 0; cell < cover.length; cell++) {
      expect(cover[cell]).toBeCloseTo(1, 9)
      expect(light[3 * cell]).toBeCloseTo(r, 9)
    }
  })

  it('keeps the light of the whole picture, however it is cut into square cells', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 1, max: 9 }),
        (across, down) => {
          const picture = paintPicture('shore', 23, 17)
          const [whole = 0] = lightOf(picture).light
          const { light } = lightOf(picture, square(across, down))
          const reds = light.filter((_, i) => i % 3 === 0)
          expect(reds.reduce((sum, red) => sum + red, 0) / reds.length).toBeCloseTo(whole, 9)
        },
      ),
    )
  })
})
