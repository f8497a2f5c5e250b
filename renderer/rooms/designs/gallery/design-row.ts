import type { CallOutput } from '../../../../shared-core/contract/calls.ts'

/** A design as the gallery knows it. */
export type DesignRow = CallOutput<'designs.list'>['designs'][number]
