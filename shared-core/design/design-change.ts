import type { ChartDifference } from '../chart/compare-charts.ts'
import type { RouteSettings } from './design.ts'

/** A value before and after; absent where there was or is none. */
export type Turned<T> = Readonly<{ from: T | undefined; to: T | undefined }>

/** What of a design differs as one value: durations in seconds, thread by id and strands, needle by size. */
export type BodyField =
  | 'unitName'
  | 'threadId'
  | 'threadStrands'
  | 'needleSize'
  | 'setUpS'
  | 'finishingS'
/** What of a palette's slot differs. */
export type SlotField = 'name' | 'formId' | 'colourHex' | 'finish'
/** What of a part differs as one value; an anchor is written `panel row/bead`, 0-based. */
export type PartField =
  | 'name'
  | 'formId'
  | 'copies'
  | 'mirrored'
  | 'shape'
  | 'beads'
  | 'findingId'
  | 'anchor'

type Value = string | number | boolean

/** One difference between two versions of a design; parts, slots and extras are known by id or letter. */
export type DesignChange =
  | (Readonly<{ kind: 'body'; field: BodyField }> & Turned<Value>)
  | Readonly<{ kind: 'slot-added' | 'slot-removed'; label: string; name: string }>
  | (Readonly<{ kind: 'slot'; label: string; field: SlotField }> & Turned<Value>)
  | Readonly<{ kind: 'part-added' | 'part-removed'; partId: string; name: string }>
  | (Readonly<{ kind: 'part'; partId: string; name: string; field: PartField }> & Turned<Value>)
  | Readonly<{ kind: 'chart'; partId: string; name: string; difference: ChartDifference }>
  | (Readonly<{ kind: 'route'; partId: string; name: string; setting: keyof RouteSettings }> &
      Turned<Value>)
  | Readonly<{ kind: 'parts-moved' }>
  | Readonly<{ kind: 'extra-added' | 'extra-removed'; name: string; count: number }>
  | (Readonly<{ kind: 'extra'; name: string; field: 'name' | 'count' | 'kind' }> & Turned<Value>)
