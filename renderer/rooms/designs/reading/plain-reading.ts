import type { DesignReading, PartReading } from '../../../../shared-core/design/reading.ts'

/** A part's reading without what is written out on demand: plain data that a worker can send. */
export type PlainPart = Omit<PartReading, 'events' | 'steps' | 'words'>

/** A design's reading as plain data. Events, steps and words are written out where they are shown. */
export type PlainReading = Omit<DesignReading, 'parts'> & Readonly<{ parts: readonly PlainPart[] }>

/** Leaves out what is written out on demand, without writing it out. */
export function plainReading(reading: DesignReading): PlainReading {
  return { ...reading, parts: reading.parts.map(plainPart) }
}

function plainPart(part: PartReading): PlainPart {
  const { partId, beads, widthMm, heightMm, route, thread, passes, fill, holds } = part
  const { warnings, labourS } = part
  const { count, kind, a, b, code, poolCount, pool, poolDirection, texts } = route
  return {
    partId,
    beads,
    widthMm,
    heightMm,
    // The writer's own fields stay behind.
    route: { count, kind, a, b, code, poolCount, pool, poolDirection, texts },
    thread,
    passes,
    fill,
    holds,
    warnings,
    labourS,
  }
}
