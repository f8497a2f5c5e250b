import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { writeLengths } from '../../../../shared-core/route/write-lengths.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button, IconButton } from '../../../ui/button.tsx'
import { Select } from '../../../ui/select.tsx'
import { type Player, stepAt } from '../thread/player.ts'
import type { ThreadView } from './use-thread-view.ts'
import './thread-strip.css'

/** Plays, steps and scrubs the thread's journey, and tells the step in words. */
export function ThreadStrip({
  thread: { reel, playing, partId, choosePart },
  body,
  player,
}: Readonly<{ thread: ThreadView; body: DesignBody; player: Player }>) {
  const format = useFormat()
  if (reel === undefined) return <p role="status">Laying the thread…</p>
  const { steps, line } = reel
  const at = stepAt(steps, playing.event)
  const step = steps[at]
  const last = line.upTo.length - 1
  const place = step === undefined ? 'Before the first step' : `Step ${at + 1} of ${steps.length}`
  const words = step === undefined ? 'Nothing is laid yet.' : writeLengths(step.text, format.thread)
  return (
    <section className="thread-strip" aria-label="The thread’s journey">
      <div className="thread-strip-row">
        <IconButton icon="back" label="One step back (comma)" onClick={() => player.step(-1)} />
        <Button
          kind="primary"
          icon={playing.isPlaying ? 'pause' : 'play'}
          className="thread-strip-play"
          onClick={() => (playing.isPlaying ? player.pause() : player.play())}
        >
          {playing.isPlaying ? 'Pause' : 'Play'}
        </Button>
        <IconButton icon="forward" label="One step on (full stop)" onClick={() => player.step(1)} />
        <input
          type="range"
          className="thread-strip-scrub"
          aria-label="How far the thread is laid"
          aria-valuetext={`${place}: ${words}`}
          min={-1}
          max={last}
          value={playing.event}
          onChange={(event) => player.toEvent(Number(event.target.value))}
        />
        {body.parts.length > 1 && (
          <Select
            label="Part"
            labelHidden
            value={partId ?? null}
            options={body.parts.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={choosePart}
          />
        )}
      </div>
      <p className="thread-strip-words" aria-live={playing.isPlaying ? 'off' : 'polite'}>
        <span className="thread-strip-place">{place}</span>
        <span>{words}</span>
      </p>
    </section>
  )
}
