import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { MINUS } from '../../../../shared-core/units/format-number.ts'
import type { Format } from '../../../app/format.ts'
import { sizeWords } from '../figures/size-words.ts'
import type { PlainReading } from '../reading/plain-reading.ts'

/** A figure of two versions and how far they are apart; `difference` is empty where they are the same. */
export type FigureDifference = Readonly<{
  label: string
  before: string
  after: string
  difference: string
}>

type Version = Readonly<{ body: DesignBody; reading: PlainReading }>

/** Beads, each slot's beads, grams, thread, size and minutes of two versions, side by side. */
export function figureDifferences(
  before: Version,
  after: Version,
  format: Format,
): readonly FigureDifference[] {
  const [old, now] = [before.reading, after.reading]
  const row = (label: string, a: number, b: number, write: (value: number) => string) => ({
    label,
    before: write(a),
    after: write(b),
    difference: signed(a, b, write),
  })
  const sizes = [sizeWords(old, format), sizeWords(now, format)] as const
  return [
    row('Beads', old.beads, now.beads, format.count),
    ...slotLabels(before, after).map((label) =>
      row(slotName(label, before, after), countOf(old, label), countOf(now, label), format.count),
    ),
    row('Weight of a unit', old.unitMassMg.value, now.unitMassMg.value, format.mass),
    row('Thread in it', old.thread.inPieceMm.value, now.thread.inPieceMm.value, format.thread),
    row('Thread to cut', old.thread.spoolMm.value, now.thread.spoolMm.value, format.thread),
    row('Time at the bench', old.labour.totalS.value, now.labour.totalS.value, format.duration),
    {
      label: 'Finished size',
      before: sizes[0],
      after: sizes[1],
      difference: sizes[0] === sizes[1] ? '' : 'another size',
    },
  ]
}

/** `+12`, or with a true minus; empty when both are written alike. */
export function signed(from: number, to: number, write: (value: number) => string): string {
  if (write(from) === write(to)) return ''
  return `${to > from ? '+' : MINUS}${write(Math.abs(to - from))}`
}

function slotLabels(before: Version, after: Version): readonly string[] {
  const labels = [...after.body.palette, ...before.body.palette].map(({ label }) => label)
  return [...new Set(labels)]
}

function slotName(label: string, before: Version, after: Version): string {
  const find = ({ body }: Version) => body.palette.find((slot) => slot.label === label)?.name
  return `${label}, ${find(after) ?? find(before) ?? ''}`
}

function countOf({ counts }: PlainReading, label: string): number {
  return counts.find((slot) => slot.label === label)?.count ?? 0
}
