import { type KeyboardEvent, useEffect, useMemo, useState } from 'react'
import { findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import type { OverlayLayer } from '../../../drawing/overlay.ts'
import type { PointMm } from '../../../drawing/use-picture-input.ts'
import type { Assembly } from '../assembly/assemble.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import { pickedAt } from '../thread/picked-at.ts'
import { type Player, type Playing, type Reel, stepAt } from '../thread/player.ts'
import { threadLayer } from '../thread/thread-layer.ts'
import { type ThreadPath, threadPath } from '../thread/thread-path.ts'
import { unpickedLayer } from '../thread/unpicked-layer.ts'
import { usePlaying } from '../thread/use-playing.ts'
import { useReel } from '../thread/use-reel.ts'
import type { ShownStep } from './shown-step.ts'

/** The thread's route as it is shown now, and what its controls need. */
export type ThreadView = Readonly<{
  layers: readonly OverlayLayer[]
  reel: Reel | undefined
  playing: Playing
  /** Where the needle is, mm; nowhere before it begins. */
  needleAt: PointMm | undefined
  partId: string | undefined
  choosePart: (partId: string) => void
  onKeyDown: (event: KeyboardEvent) => void
}>

const NO_LAYERS: readonly OverlayLayer[] = []

/** Lays a part's thread over the beads as far as it has been played. */
export function useThreadView({
  isOn,
  body,
  reading,
  assembly,
  player,
  step: asked,
}: Readonly<{
  isOn: boolean
  body: DesignBody
  reading: PlainReading | undefined
  assembly: Assembly
  player: Player
  step: ShownStep | undefined
}>): ThreadView {
  const tables = useBeadTables()
  const [chosen, setChosen] = useState<string | undefined>(asked?.partId)
  const parts = reading?.parts
  const part = parts?.find(({ partId }) => partId === chosen) ?? parts?.[0]
  // A strand's events are those of its last copy.
  const placed = assembly.parts.findLast(({ partId }) => partId === part?.partId)
  const reel = useReel(player, isOn ? part : undefined, placed)
  useEffect(() => {
    if (reel !== undefined && asked !== undefined) player.toEvent(asked.event)
  }, [player, reel, asked])
  const playing = usePlaying(player)
  const threadMm = findThread(tables, body.threadId)?.diameterMm.value ?? 0.15
  const path = useMemo(() => reel && threadPath(reel.line, threadMm), [reel, threadMm])
  const picked = useMemo(
    () => (reel && part ? pickedAt(assembly, part.partId, part.route) : undefined),
    [reel, assembly, part],
  )
  const layers = useMemo(() => {
    if (!isOn || reel === undefined || path === undefined || picked === undefined) return NO_LAYERS
    const { event, reach } = playing
    const step = reel.steps[stepAt(reel.steps, event)]
    const isWhole = event >= reel.line.upTo.length - 1
    const litFrom = step === undefined || isWhole ? reach : firstPoint(reel, step.fromEvent)
    const thread = threadLayer({ path, threadMm, reach, litFrom })
    return isWhole ? [thread] : [unpickedLayer(picked, event), thread]
  }, [isOn, reel, path, picked, playing, threadMm])
  return {
    layers,
    reel,
    playing,
    needleAt: isOn && path !== undefined ? needleAt(path, playing.reach) : undefined,
    partId: part?.partId,
    choosePart: setChosen,
    onKeyDown: (event) => {
      if (answerKey(event.key, player)) event.preventDefault()
    },
  }
}

function needleAt({ xMm, yMm }: ThreadPath, reach: number): PointMm | undefined {
  const last = Math.ceil(reach) - 1
  const [x, y] = [xMm[last], yMm[last]]
  return x === undefined || y === undefined ? undefined : { xMm: x, yMm: y }
}

function firstPoint({ line }: Reel, event: number): number {
  return event === 0 ? 0 : (line.upTo[event - 1] ?? 0)
}

/** Keys of the thread's route while the picture has the focus. True when the key was one. */
function answerKey(key: string, player: Player): boolean {
  if (key === ' ') {
    if (player.read().isPlaying) player.pause()
    else player.play()
  } else if (key === '.') player.step(1)
  else if (key === ',') player.step(-1)
  else if (key === 'Home') player.toEvent(-1)
  else if (key === 'End') player.toEvent(Number.MAX_SAFE_INTEGER)
  else return false
  return true
}
