import { useMemo } from 'react'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import type { OverlayLayer } from '../../../drawing/overlay.ts'
import type { Assembly } from '../assembly/assemble.ts'
import { levelScene, levelsOf } from '../layers/level-scene.ts'
import { type BeadMark, markLayer } from '../layers/mark-layer.ts'
import { fillLevels, passHexes, passInk } from '../layers/pass-levels.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import type { ViewName } from './views.ts'

type LevelView = Readonly<{
  scene: BeadScene
  /** A level for each bead of the picture; empty where the view has none. */
  levels: Uint16Array
  layers: readonly OverlayLayer[]
}>

const NO_LEVELS = new Uint16Array()
const NO_LAYERS: readonly OverlayLayer[] = []

/** The beads coloured by what a view tells of each: passes, or how full its hole is. */
export function useLevelView({
  view,
  reading,
  assembly,
}: Readonly<{
  view: ViewName
  reading: PlainReading | undefined
  assembly: Assembly
}>): LevelView {
  return useMemo(() => {
    const parts = reading?.parts
    if (parts === undefined || (view !== 'passes' && view !== 'holes')) {
      return { scene: assembly.scene, levels: NO_LEVELS, layers: NO_LAYERS }
    }
    const isPasses = view === 'passes'
    const levels = levelsOf(assembly, parts, ({ passes, fill }) => (isPasses ? passes : fill))
    const hexes = isPasses ? passHexes : fillLevels.map(({ hex }) => hex)
    const markOf = isPasses ? passMark : fillMark
    return {
      scene: levelScene(assembly.scene, levels, hexes),
      levels,
      layers: [markLayer((bead) => markOf(levels[bead] ?? 0))],
    }
  }, [view, reading, assembly])
}

function passMark(passes: number): BeadMark {
  return { kind: 'number', number: passes, ink: passInk(passes) }
}

function fillMark(level: number): BeadMark | undefined {
  const ink = fillLevels[level]?.ink ?? ''
  if (level === 1) return { kind: 'bar', ink }
  return level === 2 ? { kind: 'cross', ink } : undefined
}
