import type { MakeOutline } from '../../../shared-core/bench/make-outline.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import type { OwnSeconds } from '../../../shared-core/design/read-labour.ts'
import type { DesignReading } from '../../../shared-core/design/reading.ts'

/**
 * What the books need to know of a version: small, and the same as long as its tables are.
 *
 * Counted with the reference tables and the workshop's own forms and threads; its weighings, and
 * what it has learnt of itself, come in with the bill.
 */
export type VersionFacts = Readonly<{
  designId: string
  ownSeconds: OwnSeconds
  /** The bead forms its body names. */
  formIds: readonly string[]
  /** The own figures it was counted with, written out; empty where reference tables said all. */
  ownFigures: string
  /** Its pieces and rows, to say where a hand is. */
  outline: MakeOutline
}> &
  Pick<DesignBody, 'unitName' | 'palette' | 'extras' | 'threadId'> &
  Pick<DesignReading, 'beads' | 'counts' | 'thread' | 'labour' | 'work'>
