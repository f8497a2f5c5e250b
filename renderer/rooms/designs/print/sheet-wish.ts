import type { CallInput } from '../../../../shared-core/contract/calls.ts'

/** What a sheet is asked for with. */
export type SheetWish = CallInput<'designs.sheet'>
export type Audience = SheetWish['audience']
export type Paper = SheetWish['paper']

/** What the maker has chosen on the screen. */
export type SheetChoice = Readonly<{
  audience: Audience
  paper: Paper
  colourwayId: string
  version: number
  terms: string
}>

/** The choice as the contract takes it; terms are for readers of a sheet, not for the maker's own bench. */
export function sheetWish(designId: string, choice: SheetChoice): SheetWish {
  const { audience, paper, colourwayId, version } = choice
  const terms = audience === 'self' ? '' : choice.terms.trim()
  return {
    designId,
    colourwayId,
    version,
    audience,
    paper,
    ...(terms === '' ? {} : { terms }),
  }
}
