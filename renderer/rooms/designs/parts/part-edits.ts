import type { DesignBody, Panel, Part, Strand } from '../../../../shared-core/design/design.ts'
import { startChart } from './start-chart.ts'

/** Beads a new fringe begins with, and a new loop: enough to be seen. */
const NEW_FRINGE = 8
const NEW_LOOP = 6

/** A body after a change of its parts, and the part the change is about. */
export type Edited = Readonly<{ body: DesignBody; partId: string }>

/** Adds a panel: a small block of the first slot in the stitch and form of the first panel, to be drawn on. */
export function addPanel(body: DesignBody): Edited {
  const first = body.parts.find((part) => part.kind === 'panel')
  const panel: Panel = {
    kind: 'panel',
    id: freshId(body.parts, 'panel'),
    name: freshName(body.parts, 'Panel'),
    chart: startChart(first?.chart.stitch ?? 'brick'),
    formId: first?.formId ?? body.palette[0]?.formId ?? '',
    copies: first?.copies ?? 1,
    mirrored: first?.mirrored ?? false,
    route: {},
  }
  return { body: { ...body, parts: [...body.parts, panel] }, partId: panel.id }
}

/** Adds a strand: fringe at the foot of a panel, a loop at its head; from nothing where there is no panel. */
export function addStrand(body: DesignBody, shape: Strand['shape'], panelId?: string): Edited {
  const panels = body.parts.filter((part) => part.kind === 'panel')
  const panel = panels.find(({ id }) => id === panelId) ?? panels[0]
  const row = shape === 'loop' ? firstRow(panel) : lastRow(panel)
  const finding = shape === 'loop' && body.extras.find(({ kind }) => kind === 'finding')
  const strand: Strand = {
    kind: 'strand',
    id: freshId(body.parts, shape),
    name: freshName(body.parts, shape === 'loop' ? 'Loop' : 'Fringe'),
    shape,
    beads: `${shape === 'loop' ? NEW_LOOP : NEW_FRINGE}A`,
    ...(finding ? { findingId: finding.id } : {}),
    ...(panel === undefined ? {} : { anchor: { panelId: panel.id, row, bead: 0 } }),
    copies: 1,
  }
  return { body: { ...body, parts: [...body.parts, strand] }, partId: strand.id }
}

/** Copies a part; a panel takes copies of what hangs from it along. */
export function copyPart(body: DesignBody, partId: string): Edited {
  const part = body.parts.find(({ id }) => id === partId)
  if (part === undefined) return { body, partId }
  const copy: Part = {
    ...part,
    id: freshId(body.parts, part.kind === 'panel' ? 'panel' : part.shape),
    name: freshName(body.parts, part.name),
  }
  const added: Part[] = [copy]
  for (const strand of hangingFrom(body, partId)) {
    const known = [...body.parts, ...added]
    const anchor = strand.anchor && { ...strand.anchor, panelId: copy.id }
    added.push({
      ...strand,
      id: freshId(known, strand.shape),
      name: freshName(known, strand.name),
      ...(anchor && { anchor }),
    })
  }
  return { body: { ...body, parts: [...body.parts, ...added] }, partId: copy.id }
}

/** Strands that hang from a part. */
export function hangingFrom(body: DesignBody, partId: string): readonly Strand[] {
  return body.parts.filter(
    (part): part is Strand => part.kind === 'strand' && part.anchor?.panelId === partId,
  )
}

/** Takes a part away, and with a panel all that hangs from it. */
export function removePart(body: DesignBody, partId: string): Edited {
  const gone = new Set([partId, ...hangingFrom(body, partId).map(({ id }) => id)])
  const at = body.parts.findIndex(({ id }) => id === partId)
  const parts = body.parts.filter(({ id }) => !gone.has(id))
  return { body: { ...body, parts }, partId: (parts[at] ?? parts.at(-1))?.id ?? '' }
}

/** Moves a part one place up or down in the order the parts are worked and told. */
export function movePart(body: DesignBody, partId: string, by: -1 | 1): DesignBody {
  const at = body.parts.findIndex(({ id }) => id === partId)
  const [part, other] = [body.parts[at], body.parts[at + by]]
  if (part === undefined || other === undefined) return body
  return { ...body, parts: body.parts.with(at, other).with(at + by, part) }
}

/** The body with one part replaced by another of the same id. */
export function withPart(body: DesignBody, part: Part): DesignBody {
  return { ...body, parts: body.parts.map((one) => (one.id === part.id ? part : one)) }
}

/** The body without a finding or packaging; strands that carried it carry nothing. */
export function removeExtra(body: DesignBody, extraId: string): DesignBody {
  return {
    ...body,
    extras: body.extras.filter(({ id }) => id !== extraId),
    parts: body.parts.map((part) => {
      if (part.kind === 'panel' || part.findingId !== extraId) return part
      const { findingId: _, ...rest } = part
      return rest
    }),
  }
}

function freshId(parts: readonly Part[], stem: string): string {
  for (let number = 1; ; number += 1) {
    const id = number === 1 ? stem : `${stem}${number}`
    if (!parts.some((part) => part.id === id)) return id
  }
}

function freshName(parts: readonly Part[], name: string): string {
  const stem = name.replace(/ \d+$/, '')
  if (!parts.some((part) => part.name === name)) return name
  for (let number = 2; ; number += 1) {
    const wanted = `${stem.slice(0, 112)} ${number}`
    if (!parts.some((part) => part.name === wanted)) return wanted
  }
}

function firstRow(panel: Panel | undefined): number {
  return Math.max(0, panel?.chart.rows.findIndex(hasBead) ?? 0)
}

function lastRow(panel: Panel | undefined): number {
  return Math.max(0, panel?.chart.rows.findLastIndex(hasBead) ?? 0)
}

function hasBead({ cells }: Panel['chart']['rows'][number]): boolean {
  return /[A-Z]/.test(cells)
}
