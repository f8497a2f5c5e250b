import type { PictureRequest } from '../../../../shared-core/colour/picture/picture-request.ts'
import { paintPicture } from '../../../fixtures/picture-generator.ts'
import { brick } from './layouts.ts'

/** A request for a chart of the painted shore in twelve colours. */
export function shoreRequest(over: Partial<PictureRequest> = {}): PictureRequest {
  return {
    picture: paintPicture('shore', 80, 60),
    cells: brick(20, 15),
    fit: 'stretch',
    colours: { kind: 'free', count: 12 },
    dithering: 'none',
    smallestPatch: 1,
    ...over,
  }
}
