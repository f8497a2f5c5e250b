import type { Flag, Kept } from './kept.ts'

export type DesignTable = Kept & Readonly<{ name: string; tags_json: string; archived: Flag }>

export type DesignVersionTable = Kept &
  Readonly<{
    design_id: string
    version: number
    body_json: string
    note: string
    saved_at_ms: number
  }>

export type VersionReadingTable = Readonly<{
  version_id: string
  edition: number
  reading_json: string
}>

/** What lies on the drawing table of a design: the body after `position` of `count` strokes. */
export type DraftTable = Readonly<{
  design_id: string
  body_json: string
  position: number
  count: number
  /** The version the drawing was last the same as, and after which stroke; null when that stroke is gone. */
  saved_version_id: string
  saved_position: number | null
}>

export type DraftStrokeTable = Readonly<{
  design_id: string
  seq: number
  label: string
  redo_json: string
  undo_json: string
}>

export type ColourwayTable = Kept & Readonly<{ design_id: string; position: number; name: string }>

export type ColourwayMaterialTable = Kept &
  Readonly<{ colourway_id: string; key: string; material_id: string }>

export type SetPriceTable = Kept &
  Readonly<{
    design_id: string
    colourway_id: string
    channel_id: string
    price_minor: number | null
  }>
