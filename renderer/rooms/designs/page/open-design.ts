import type { CallOutput } from '../../../../shared-core/contract/calls.ts'

/** A version of a design as it was read. */
export type DesignDetail = CallOutput<'designs.read'>
export type Colourway = DesignDetail['colourways'][number]
export type MaterialRow = CallOutput<'materials.list'>['materials'][number]

/** Which material fills each key of the bill. */
export type Fillings = Readonly<Record<string, string>>
