import type { DesignBody } from '../../../shared-core/design/design.ts'
import type { OwnSeconds } from '../../../shared-core/design/read-labour.ts'
import type { DesignReading } from '../../../shared-core/design/reading.ts'

/**
 * What the books need to know of a version: small, and the same for ever.
 *
 * Counted with the reference tables; the workshop's own weighings, and what it has learnt of itself,
 * come in with the bill.
 */
export type VersionFacts = Readonly<{ designId: string; ownSeconds: OwnSeconds }> &
  Pick<DesignBody, 'unitName' | 'palette' | 'extras' | 'threadId'> &
  Pick<DesignReading, 'beads' | 'counts' | 'thread' | 'labour' | 'work'>
