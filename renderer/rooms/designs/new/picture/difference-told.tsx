import type { Format } from '../../../../app/format.ts'
import { Button } from '../../../../ui/button.tsx'
import { RefusalNotice } from '../../../../ui/notice.tsx'
import { ProgressBar } from '../../../../ui/progress-bar.tsx'
import { differenceSentence } from './difference-sentence.ts'
import type { PictureWork } from './use-picture-chart.ts'

const stages = {
  sampling: 'Looking at each bead’s part of the picture',
  choosing: 'Choosing colours',
  matching: 'Matching beads',
  tidying: 'Tidying small patches',
} as const

/** How near the beads come to the picture, in words and in number, or how far the work has come. */
export function DifferenceTold({
  work: { last, standing, stop, again },
  format,
}: Readonly<{ work: PictureWork; format: Format }>) {
  return (
    <div className="picture-told">
      {standing.kind === 'working' && (
        <ProgressBar
          label={standing.progress === undefined ? 'Beginning' : stages[standing.progress.stage]}
          done={standing.progress?.done}
          onCancel={stop}
        />
      )}
      {standing.kind === 'stopped' && (
        <p>
          Stopped.{' '}
          <Button small onClick={again}>
            Work it out
          </Button>
        </p>
      )}
      {standing.kind === 'done' && last !== undefined && (
        <p role="status">{differenceSentence(last.made, format)}</p>
      )}
      {standing.kind === 'refused' &&
        standing.refusals.map((refusal) => (
          <RefusalNotice key={`${refusal.code} ${refusal.field}`} refusal={refusal} />
        ))}
    </div>
  )
}
