import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import type { ChartDifference } from '../../../../shared-core/chart/compare-charts.ts'
import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { DesignChange } from '../../../../shared-core/design/design-change.ts'
import type { Format } from '../../../app/format.ts'
import { routeWords } from './route-words.ts'

type Wording = Readonly<{
  before: DesignBody
  after: DesignBody
  format: Format
  tables: BeadTables
}>
type Change<K extends DesignChange['kind']> = Extract<DesignChange, { kind: K }>

/** A difference between two versions as a sentence without its full stop. */
export function changeWords(change: DesignChange, wording: Wording): string {
  const { format, tables } = wording
  switch (change.kind) {
    case 'body':
      return bodyWords(change, wording)
    case 'slot-added':
      return `Slot ${change.label}, ${change.name}, is new`
    case 'slot-removed':
      return `Slot ${change.label}, ${change.name}, is gone`
    case 'slot':
      return slotWords(change, tables)
    case 'part-added':
      return `${change.name} is new`
    case 'part-removed':
      return `${change.name} is gone`
    case 'part':
      return partWords(change, wording)
    case 'chart':
      return `${change.name}: ${chartWords(change.difference, format)}`
    case 'route':
      return `${change.name}: ${routeWords(change, format)}`
    case 'parts-moved':
      return 'The parts stand in another order'
    case 'extra-added':
      return `${change.name}, ${format.count(change.count)}, is new`
    case 'extra-removed':
      return `${change.name}, ${format.count(change.count)}, is gone`
    case 'extra':
      return extraWords(change)
  }
}

function bodyWords({ field, from, to }: Change<'body'>, { format, tables }: Wording): string {
  const time = (value: unknown) =>
    value === undefined ? 'the usual time' : format.duration(Number(value))
  switch (field) {
    case 'unitName':
      return `One unit is called ${to} instead of ${from}`
    case 'threadId':
      return `The thread is ${threadName(to, tables)} instead of ${threadName(from, tables)}`
    case 'threadStrands':
      return to === 2 ? 'The thread is worked doubled' : 'The thread is worked single'
    case 'needleSize':
      return `The needle is size ${to} instead of ${from}`
    case 'setUpS':
      return `Setting up takes ${time(to)} instead of ${time(from)}`
    case 'finishingS':
      return `Finishing takes ${time(to)} instead of ${time(from)}`
  }
}

function threadName(id: unknown, tables: BeadTables): string {
  return findThread(tables, String(id))?.name ?? String(id)
}

function slotWords({ label, field, from, to }: Change<'slot'>, tables: BeadTables): string {
  switch (field) {
    case 'name':
      return `Slot ${label} is called ${to} instead of ${from}`
    case 'formId':
      return `Slot ${label} takes ${formName(to, tables)} instead of ${formName(from, tables)}`
    case 'colourHex':
      return `Slot ${label} is drawn in another colour`
    case 'finish':
      return `Slot ${label} is drawn ${to} instead of ${from}`
  }
}

function formName(id: unknown, tables: BeadTables): string {
  return findForm(tables, String(id))?.name ?? String(id)
}

function partWords(
  { name, field, from, to }: Change<'part'>,
  { before, after, format, tables }: Wording,
): string {
  const finding = (body: DesignBody, id: unknown) =>
    body.extras.find((extra) => extra.id === id)?.name ?? 'nothing'
  switch (field) {
    case 'name':
      return `${from} is now called ${to}`
    case 'formId':
      return `${name} is of ${formName(to, tables)} instead of ${formName(from, tables)}`
    case 'copies':
      return `${name} is there ${times(to, format)} instead of ${times(from, format)}`
    case 'mirrored':
      return to === true
        ? `${name}: every second copy is mirrored now`
        : `${name}: the copies are no longer mirrored`
    case 'shape':
      return `${name} is a ${to} instead of a ${from}`
    case 'beads':
      return `${name} is ${to} instead of ${from}`
    case 'findingId':
      return `${name} carries ${finding(after, to)} instead of ${finding(before, from)}`
    case 'anchor':
      return `${name} hangs from ${anchorWords(to, after)} instead of ${anchorWords(from, before)}`
  }
}

function times(copies: unknown, format: Format): string {
  return copies === 1 ? 'once' : `${format.count(Number(copies))} times`
}

/** `panel 0/3` as the maker counts: row 1, bead 4. */
function anchorWords(anchor: unknown, { parts }: DesignBody): string {
  const [, panelId, row, bead] = /^(.*) (\d+)\/(\d+)$/.exec(String(anchor)) ?? []
  if (row === undefined) return 'nothing'
  const panels = parts.filter(({ kind }) => kind === 'panel')
  const of = panels.find(({ id }) => id === panelId)?.name
  const place = `row ${Number(row) + 1}, bead ${Number(bead) + 1}`
  return panels.length > 1 && of !== undefined ? `${of}, ${place}` : place
}

/** What of a chart changed, in one line: stitch, rows, beads. */
export function chartWords(difference: ChartDifference, format: Format): string {
  const { stitch, rowsAdded, rowsRemoved, rowsMoved, cells } = difference
  const words = [
    stitch === undefined ? '' : `${stitchName(stitch.to)} instead of ${stitchName(stitch.from)}`,
    rowsAdded.length === 0 ? '' : `${format.counted(rowsAdded.length, 'row')} added`,
    rowsRemoved.length === 0 ? '' : `${format.counted(rowsRemoved.length, 'row')} taken out`,
    rowsMoved.length === 0 ? '' : `${format.counted(rowsMoved.length, 'row')} moved sideways`,
    cells.count === 0 ? '' : `${format.counted(cells.count, 'bead')} changed`,
  ]
  return words.filter((word) => word !== '').join(', ')
}

function extraWords({ name, field, from, to }: Change<'extra'>): string {
  if (field === 'name') return `${from} is now called ${to}`
  return field === 'count'
    ? `${name}: ${to} a unit instead of ${from}`
    : `${name} counts as ${to} instead of ${from}`
}
