import { useMemo } from 'react'
import type { PlacedLine, ReaderMap } from '../../../../shared-core/bench/reader-place.ts'
import { fitView, type SizePx } from '../../../drawing/view.ts'
import type { Assembly } from '../../designs/assembly/assemble.ts'
import { boxLayer } from './box-layer.ts'
import { beadsInPicture, madeBeads, mirrorScene } from './piece-beads.ts'
import { StillPicture } from './still-picture.tsx'
import { pieceName } from './tell-line.ts'
import { washLayer } from './wash-layer.ts'

/** The whole piece: what is made in its colours, the rest faded, the row in hand ringed. */
export function PieceView({
  map,
  at,
  placed,
  assembly,
}: Readonly<{ map: ReaderMap; at: number; placed: PlacedLine; assembly: Assembly | undefined }>) {
  const inUnit = at >= map.steps ? map.stepsInUnit : at % map.stepsInUnit
  const { piece } = placed
  const scene = useMemo(
    () => assembly && (piece.isMirrored ? mirrorScene(assembly.scene) : assembly.scene),
    [assembly, piece.isMirrored],
  )
  const layers = useMemo(
    () =>
      assembly === undefined
        ? []
        : [
            washLayer(madeBeads(assembly, map, piece, inUnit)),
            boxLayer(at >= map.steps ? [] : beadsInPicture(assembly, placed)),
          ],
    [assembly, map, piece, placed, inUnit, at],
  )
  const viewOf = useMemo(
    () => (canvas: SizePx) => fitView(scene ?? { widthMm: 1, heightMm: 1 }, canvas),
    [scene],
  )
  const done = map.stepsInUnit === 0 ? 0 : Math.min(1, at / map.steps)
  return (
    <div className="reader-piece">
      {scene !== undefined && (
        <StillPicture
          className="reader-whole"
          scene={scene}
          layers={layers}
          viewOf={viewOf}
          label={`${pieceName(piece)}, made so far`}
        />
      )}
      <label className="reader-progress">
        <span>{Math.floor(done * 100)} % of all steps</span>
        <progress max={1} value={done} />
      </label>
    </div>
  )
}
