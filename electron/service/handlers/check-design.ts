import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import { slotLabel } from '../../../shared-core/chart/chart.ts'
import type { DesignBody, Strand } from '../../../shared-core/design/design.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { Refused, refuse } from '../refused.ts'

/** Refuses a design that could not be read back as a whole with these tables. */
export function checkDesign(body: DesignBody, tables: BeadTables): void {
  body.palette.forEach(({ label }, at) => {
    if (label === slotLabel(at)) return
    refuse(
      'palette-order',
      `Slot ${at + 1} of the palette is called ${label}.`,
      `Name the slots in order; this one is ${slotLabel(at)}.`,
      `body.palette.${at}.label`,
    )
  })
  refuseDouble(body.parts, 'parts')
  refuseDouble(body.extras, 'extras')
  body.parts.forEach((part, at) => {
    if (part.kind === 'strand') checkStrand(body, part, `body.parts.${at}`)
  })
  const read = readDesign(body, tables)
  if (read.ok) return
  const { field } = read.error
  throw new Refused({
    ...read.error,
    ...(field === undefined ? {} : { field: `body.${field}` }),
  })
}

function refuseDouble(items: readonly Readonly<{ id: string }>[], list: 'parts' | 'extras'): void {
  const at = items.findIndex((item, index) =>
    items.slice(0, index).some((earlier) => earlier.id === item.id),
  )
  if (at < 0) return
  refuse(
    'id-twice',
    `Two of the ${list} have the id ${items[at]?.id}.`,
    'Give each its own id.',
    `body.${list}.${at}.id`,
  )
}

function checkStrand(body: DesignBody, strand: Strand, field: string): void {
  const { anchor, findingId } = strand
  const panels = body.parts.filter((part) => part.kind === 'panel')
  if (anchor !== undefined && !panels.some((panel) => panel.id === anchor.panelId)) {
    refuse(
      'unknown-panel',
      `${strand.name} hangs from the panel ${anchor.panelId}, which the design does not have.`,
      'Let it hang from one of the design’s panels, or from nothing.',
      `${field}.anchor.panelId`,
    )
  }
  const findings = body.extras.filter((extra) => extra.kind === 'finding')
  if (findingId !== undefined && !findings.some((finding) => finding.id === findingId)) {
    refuse(
      'unknown-finding',
      `${strand.name} carries the finding ${findingId}, which the design does not have.`,
      'Add the finding to the design first, or let the strand carry none.',
      `${field}.findingId`,
    )
  }
}
