import { findForm } from '../../../../shared-core/beads/bead-tables.ts'
import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import { formatGeometry, formatThread } from '../../../../shared-core/units/format-length.ts'
import { threadMm } from '../../../../shared-core/units/length.ts'
import type { Audience, SheetData } from './sheet-data.ts'

/** What a sheet calls itself, by whom it is for. */
export const AUDIENCE_NAME: Readonly<Record<Audience, string>> = {
  self: 'Workshop copy',
  sale: 'Pattern',
  class: 'Class sheet',
}

/** The stitches of a design in the order of its panels, as a sentence begins: `Brick stitch and peyote`. */
export function stitchWords({ parts }: SheetData['body']): string {
  const kinds = new Set<StitchKind>()
  for (const part of parts) if (part.kind === 'panel') kinds.add(part.chart.stitch)
  const names = [...kinds].map(stitchName)
  const all = names.length === 0 ? ['strung beads'] : names
  const words = listed(all)
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`
}

/** `one`, `one and two`, `one, two and three`. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? ''
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

/** The finished size of one piece in both systems. */
export function sizeWords({
  reading,
  decimal,
}: SheetData): Readonly<{ mm: string; inches: string }> {
  const both = (system: 'metric' | 'imperial') =>
    [reading.widthMm.value, reading.heightMm.value]
      .map((mm) => formatGeometry(mm, { decimal, system }))
      .join(' × ')
  return { mm: both('metric'), inches: both('imperial') }
}

/** The forms the beads come in, each once. */
export function formNames({ body, reading, tables }: SheetData): readonly string[] {
  const used = new Set(reading.counts.map(({ label }) => label))
  const names = body.palette
    .filter(({ label }) => used.has(label))
    .map(({ formId }) => findForm(tables, formId)?.name ?? formId)
  return [...new Set(names)]
}

/** A mass to have at hand as it is printed: up to a hundredth of a gram, as a bench scale shows, in mg. */
export function printedMg(needMg: number): number {
  return Math.ceil(needMg / 10 - 1e-9) * 10
}

/** Lengths to cut, alike ones together: `2 lengths of 1.23 m, 23 lengths of 45.4 cm`. */
export function cutWords({ reading, decimal }: SheetData): string {
  const alike = Map.groupBy(reading.thread.cutMm, (mm) => mm)
  return listed(
    [...alike].map(([mm, { length }]) => {
      const size = formatThread(threadMm(Math.round(mm)), { decimal })
      return `${length} ${length === 1 ? 'length' : 'lengths'} of ${size}`
    }),
  )
}
