import { useMemo } from 'react'
import type { ChartJson } from '../../../../shared-core/chart/chart-json.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { type Draft, type DraftAdditions, draftBody, firstDraft } from './draft.ts'

/** The design a draft would be; the same object until something that shapes it changes, so not with name or tags. */
export function useDraftBody(
  draft: Draft,
  chart: ChartJson,
  { palette, strands }: DraftAdditions,
): DesignBody {
  const { shape, mirrored, formId, threadId, needleSize, extras, unitName } = draft
  return useMemo(() => {
    const said = { shape, mirrored, formId, threadId, needleSize, extras, unitName }
    return draftBody(chart, { ...firstDraft, ...said }, { palette, strands })
  }, [chart, palette, strands, shape, mirrored, formId, threadId, needleSize, extras, unitName])
}
