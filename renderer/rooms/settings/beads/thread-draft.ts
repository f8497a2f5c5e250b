import type { Thread } from '../../../../shared-core/beads/thread.ts'
import type { CallInput } from '../../../../shared-core/contract/calls.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import { figure } from './table-words.ts'
import { keptSpread, shownSpread, type TypedBasis, type TypedSpread } from './typed-spread.ts'

/** A thread as it is being typed. */
export type ThreadDraft = Readonly<{
  id: string | undefined
  name: string
  construction: Thread['construction']
  diameter: TypedSpread
  /** Grams in 1000 m; the value is missing while it cannot be read. */
  tex: Readonly<{ text: string; value: number | undefined }>
  /** Chosen by the maker; the figure keeps its own until then. */
  basis: TypedBasis | undefined
}>

/** The draft of a thread, or of a new one. */
export function threadDraft(thread: Thread | undefined, decimal: DecimalMark): ThreadDraft {
  const tex = thread?.tex
  return {
    id: thread?.id,
    name: thread?.name ?? '',
    construction: thread?.construction ?? 'braided',
    diameter: shownSpread(thread?.diameterMm, decimal),
    tex: { text: tex === undefined ? '' : figure(tex, decimal), value: tex },
    basis: thread === undefined ? 'measured' : undefined,
  }
}

/** The thread a draft says, once it has a name and its figures can be read. */
export function draftThread(
  draft: ThreadDraft,
): CallInput<'tables.saveThread'>['thread'] | undefined {
  const { id, construction, diameter, tex, basis } = draft
  const name = draft.name.trim()
  const diameterMm = keptSpread(diameter, basis)
  const isUnread = tex.value === undefined && tex.text.trim() !== ''
  if (name === '' || diameterMm === undefined || isUnread) return undefined
  return {
    ...(id === undefined ? {} : { id }),
    ...{ name, construction, diameterMm },
    ...(tex.value === undefined ? {} : { tex: tex.value }),
  }
}
