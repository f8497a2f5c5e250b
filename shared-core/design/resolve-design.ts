import type { BeadForm } from '../beads/bead-form.ts'
import type { Chart } from '../chart/chart.ts'
import { MAX_CELLS } from '../chart/chart-limits.ts'
import { readChartJson } from '../chart/read-chart-json.ts'
import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { checkpointOf } from '../route/checkpoint.ts'
import { readStrandBeads } from '../stitches/strand/strand-beads.ts'
import type { DesignBody, Panel, Strand } from './design.ts'
import { referencePace } from './labour-pace.ts'
import { referenceThreadUse } from './learn-thread-use.ts'
import type { ReadContext, ReadOptions } from './read-options.ts'

/** A design whose names are all known and whose charts can be read. */
export type ResolvedDesign = Readonly<{
  context: ReadContext
  panels: readonly ResolvedPanel[]
  strands: readonly ResolvedStrand[]
}>

/** A panel with its chart read and its form known. */
export type ResolvedPanel = Readonly<{ panel: Panel; chart: Chart; form: BeadForm }>
/** A strand with its beads as slot indexes, from the panel outwards. */
export type ResolvedStrand = Readonly<{ strand: Strand; slots: Uint16Array }>

/** Finds everything a design names, or refuses with the field that names something unknown. */
export function resolveDesign(
  body: DesignBody,
  options: ReadOptions,
): Result<ResolvedDesign, Refusal> {
  const thread = options.threads.find(({ id }) => id === body.threadId)
  if (thread === undefined) return unknown('thread', 'threadId', body.threadId)
  const needle = options.needles.find(({ size }) => size === body.needleSize)
  if (needle === undefined) return unknown('needle', 'needleSize', body.needleSize)
  const forms = new Map(options.forms.map((form) => [form.id, form]))
  for (const [at, slot] of body.palette.entries()) {
    if (!forms.has(slot.formId)) return unknown('form', `palette.${at}.formId`, slot.formId)
  }
  const twice = body.parts.findIndex(({ id }, at) => body.parts.findIndex((p) => p.id === id) < at)
  if (twice >= 0) return duplicatePart(`parts.${twice}.id`, body.parts[twice]?.id ?? '')
  const panels: ResolvedPanel[] = []
  const strands: ResolvedStrand[] = []
  for (const [at, part] of body.parts.entries()) {
    if (part.kind === 'strand') {
      const slots = readStrandBeads(part.beads)
      if (slots === undefined) return strandUnreadable(`parts.${at}.beads`, part.beads)
      strands.push({ strand: part, slots })
      continue
    }
    const form = forms.get(part.formId)
    if (form === undefined) return unknown('form', `parts.${at}.formId`, part.formId)
    const chart = readChartJson(part.chart, `parts.${at}.chart`)
    if (!chart.ok) return chart
    panels.push({ panel: part, chart: chart.value, form })
  }
  const beads = strands.reduce((sum, { strand, slots }) => sum + strand.copies * slots.length, 0)
  if (beads > MAX_CELLS) return tooManyBeads(beads)
  return ok({ context: contextOf(body, options, { thread, needle, forms }), panels, strands })
}

type Named = Pick<ReadContext, 'thread' | 'needle'> &
  Readonly<{ forms: ReadonlyMap<string, BeadForm> }>

function contextOf(
  body: DesignBody,
  options: ReadOptions,
  { thread, needle, forms }: Named,
): ReadContext {
  return {
    body,
    options,
    thread,
    strands: body.threadStrands ?? 1,
    needle,
    pace: options.pace ?? referencePace,
    threadUse: options.threadUse ?? referenceThreadUse,
    checkpoint: checkpointOf(options.isCancelled),
    formOfSlot: (slot, fallback) => forms.get(body.palette[slot]?.formId ?? '') ?? fallback,
  }
}

function unknown(what: 'thread' | 'needle' | 'form', field: string, id: string) {
  return err<Refusal>({
    code: `unknown-${what}`,
    message: `The design names the ${what} "${id}", which is in none of the tables.`,
    next: `Choose a ${what} from the list, or add it in Settings.`,
    field,
  })
}

function duplicatePart(field: string, id: string) {
  return err<Refusal>({
    code: 'duplicate-part',
    message: `Two parts of the design have the id "${id}".`,
    next: 'Give each part an id of its own.',
    field,
  })
}

function tooManyBeads(beads: number) {
  return err<Refusal>({
    code: 'too-many-strand-beads',
    message: `The strands of the design hold ${beads} beads, copies included.`,
    next: `Strands hold up to ${MAX_CELLS} beads in all: make fewer copies.`,
    field: 'parts',
  })
}

function strandUnreadable(field: string, text: string) {
  return err<Refusal>({
    code: 'strand-unreadable',
    message: `Expected a strand's beads as runs such as 12A 1B, got "${text.slice(0, 40)}".`,
    next: 'Give each run as a number and a slot letter, up to 100,000 beads in all.',
    field,
  })
}
