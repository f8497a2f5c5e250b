import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import { slotIndex } from '../../../../shared-core/chart/chart.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { PlainPart, PlainReading } from '../reading/plain-reading.ts'

/** What the holes hold with this thread and needle, and what to do where they are full. */
export function fillWords(
  body: DesignBody,
  { parts, warnings }: PlainReading,
  tables: BeadTables,
): readonly string[] {
  const name = findThread(tables, body.threadId)?.name ?? 'this thread'
  const thread = body.threadStrands === 2 ? `${name}, doubled,` : name
  const holds = [...new Set(parts.flatMap(({ holds: each }) => [...new Set(each)]))].toSorted(
    (a, b) => a - b,
  )
  const most = parts.reduce((all, part) => Math.max(all, mostPasses(part)), 0)
  const [least] = holds
  if (least === undefined) return []
  const range = holds.length === 1 ? `${least}` : `${least} to ${holds.at(-1)}`
  const advice = warnings.filter(({ code }) => code === 'hole-full').map(({ next }) => next)
  return [
    `With ${thread} and a needle size ${body.needleSize} a hole holds ${range} passes: pass ${least + 1} sticks${holds.length === 1 ? '' : ` in the narrowest (${narrowest(body, tables)})`}. The fullest bead gets ${most}.`,
    ...(advice.length > 0 ? advice : ['Nothing needs changing: every pass goes through.']),
  ]
}

function mostPasses({ passes }: PlainPart): number {
  let most = 0
  for (const one of passes) most = Math.max(most, one)
  return most
}

/** The form with the narrowest hole among the slots. */
function narrowest({ palette }: DesignBody, tables: BeadTables): string {
  const forms = palette
    .filter(({ label }) => slotIndex(label) !== undefined)
    .flatMap(({ formId }) => findForm(tables, formId) ?? [])
  const [first] = forms.toSorted((a, b) => a.holeMm.value - b.holeMm.value)
  return first?.name ?? ''
}
