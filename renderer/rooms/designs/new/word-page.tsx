import { useDeferredValue, useMemo, useRef, useState } from 'react'
import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import { type ChartJson, toChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { findStitchName, stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { parseWordChart } from '../../../../shared-core/words/parse-word-chart.ts'
import { isWordLine } from '../../../../shared-core/words/parse-word-line.ts'
import { Room } from '../../../app/room.tsx'
import { Button } from '../../../ui/button.tsx'
import { Select } from '../../../ui/select.tsx'
import { firstDraft } from '../draft/draft.ts'
import { DraftDesk } from '../draft/draft-desk.tsx'
import { stitchOptions } from '../draft/trade-options.ts'
import { LinedText, type LinedTextHandle } from './lined-text.tsx'
import { SAMPLE_WORDS } from './sample-words.ts'
import { toWays } from './to-ways.ts'
import { useLastGood } from './use-last-good.ts'
import { WordFaults } from './word-faults.tsx'

type StitchChoice = StitchKind | 'as-written'

const FIRST_ROW = 'Write or paste the first row.'
const NO_FAULTS: readonly Refusal[] = []

/** A new design from rows in words: read at every key, each fault at its line. */
export function WordPage() {
  const [text, setText] = useState('')
  const [choice, setChoice] = useState<StitchChoice>('as-written')
  const [draft, setDraft] = useState(firstDraft)
  const box = useRef<LinedTextHandle>(null)
  const { stitch, isEmpty, read } = useWords(text, choice)
  const faults = read.ok || isEmpty ? NO_FAULTS : read.error
  const own = useLastGood(
    useMemo(() => (read.ok ? toChartJson(read.value.chart) : undefined), [read]),
  )
  const sample = useMemo(sampleChart, [])
  const said = (
    <>
      <Select
        label="Stitch"
        value={choice}
        options={[
          { value: 'as-written', label: `As the text says, now ${stitchName(stitch)}` } as const,
          ...stitchOptions,
        ]}
        onChange={setChoice}
      />
      <LinedText
        ref={box}
        label="Rows in words"
        hint="Row 3 (L): (2)A, (1)B, or shorter 3: 2A 1B. Lines before the first row are passed over."
        missing={FIRST_ROW}
        text={text}
        onText={setText}
        marked={faults.flatMap(({ line }) => (line === undefined ? [] : [line]))}
      />
      <WordFaults faults={faults} onGoTo={(line) => box.current?.goTo(line)} />
    </>
  )
  return (
    <Room
      title="From a word chart"
      back={toWays}
      actions={
        <Button icon="edit" onClick={() => setText(SAMPLE_WORDS)}>
          Try a sample text
        </Button>
      }
    >
      {/* One desk from the first key on: the text must keep its place and the cursor in it. */}
      <DraftDesk
        draft={draft}
        chart={own ?? sample}
        onDraft={setDraft}
        note="Read from a word chart"
        blocked={blockedBy(isEmpty, read.ok)}
        source={
          own === undefined ? (
            <FirstWords />
          ) : (
            <Understood notes={read.ok ? read.value.notes : undefined} />
          )
        }
      >
        {said}
      </DraftDesk>
    </Room>
  )
}

/** The sample text as a chart, to look at until there is a row of her own. */
function sampleChart(): ChartJson {
  const read = parseWordChart(SAMPLE_WORDS, { stitch: 'brick' })
  if (!read.ok) throw new Error('The sample text must read as a chart.')
  return toChartJson(read.value.chart)
}

function blockedBy(isEmpty: boolean, isRead: boolean): string | undefined {
  if (isEmpty) return FIRST_ROW
  return isRead ? undefined : 'Mend the lines that are marked first.'
}

function FirstWords() {
  return (
    <div className="draft-understood">
      <p>This is the sample text, drawn. Your own is drawn here from the first row on.</p>
      <p className="designs-quiet">
        The Words view of any design can be copied and pasted too: it reads back to the same chart.
      </p>
    </div>
  )
}

function useWords(text: string, choice: StitchChoice) {
  const later = useDeferredValue(text)
  return useMemo(() => {
    const stitch = choice === 'as-written' ? (namedStitch(later) ?? 'brick') : choice
    return { stitch, isEmpty: later.trim() === '', read: parseWordChart(later, { stitch }) }
  }, [later, choice])
}

/** The stitch named before the first row. */
function namedStitch(text: string): StitchKind | undefined {
  const lines = text.split(/\r\n|\n|\r/)
  const first = lines.findIndex((line) => isWordLine(line))
  return findStitchName(lines.slice(0, first < 0 ? undefined : first).join('\n'))
}

function Understood({ notes }: Readonly<{ notes: readonly string[] | undefined }>) {
  return (
    <div className="draft-understood">
      {notes === undefined ? (
        <p>The last text that could be read. Nothing you typed is lost.</p>
      ) : (
        notes.map((sentence) => <p key={sentence}>{sentence}</p>)
      )}
      <p className="designs-quiet">Its letters become slots. Nothing is written yet.</p>
    </div>
  )
}
