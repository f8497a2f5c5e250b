import type { DesignReading, PartReading } from '../../../../shared-core/design/reading.ts'

/** A part's reading as the screens use it: the route in compact form, not its events as objects, nor its rows. */
export type PlainPart = Omit<PartReading, 'events' | 'rowStarts'>

/** A design's reading as the screens use it. */
export type PlainReading = Omit<DesignReading, 'parts'> & Readonly<{ parts: readonly PlainPart[] }>

/** A reading as plain data that a worker can send: what is written out on demand is written out. */
export function plainReading(reading: DesignReading): PlainReading {
  return { ...reading, parts: reading.parts.map(plainPart) }
}

function plainPart(part: PartReading): PlainPart {
  const { partId, beads, widthMm, heightMm, thread, passes, fill, holds } = part
  const { steps, words, warnings, labourS } = part
  const { count, kind, a, b, code, poolCount, pool, poolDirection, texts } = part.route
  return {
    partId,
    beads,
    widthMm,
    heightMm,
    // The writer's own fields stay behind.
    route: { count, kind, a, b, code, poolCount, pool, poolDirection, texts },
    steps,
    words,
    thread,
    passes,
    fill,
    holds,
    warnings,
    labourS,
  }
}
