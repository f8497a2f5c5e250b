import { useEffect, useMemo, useState, useSyncExternalStore } from 'react'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import type { Answer, CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { bridge } from '../../../app/bridge.ts'
import { refreshAfter } from '../../../app/refresh.ts'
import { DraftSession, type DraftView } from './draft-session.ts'
import type { StrokePort } from './stroke-writer.ts'

/** A drawing on the table and what can be done with it. `undo`, `redo` and the like keep their identity. */
export type Draft = DraftView &
  Readonly<{
    name: string
    canUndo: boolean
    canRedo: boolean
    /** Any change but of a chart, as one stroke with a label such as `Rename slot B`. */
    change: (label: string, next: DesignBody) => void
    /** An edit of one panel's chart as it stands now, as one stroke. */
    stroke: (label: string, partId: string, edit: ChartEdit) => void
    undo: () => void
    redo: () => void
    /** Saves what lies here as a new version; undo goes on behind it. */
    save: (note: string) => Promise<Answer<CallOutput<'designs.save'>>>
    /** Tries again to keep what could not be kept. */
    tryAgain: () => void
    session: DraftSession
  }>

const port: StrokePort = {
  stroke: (input) => bridge.request('drafts.stroke', input),
  moveTo: (input) => bridge.request('drafts.moveTo', input),
  strokes: (input) => bridge.request('drafts.strokes', input),
}

type Opened = CallOutput<'drafts.open'>
type OnTable = Readonly<{ opened: Opened; session: DraftSession }>

/**
 * The drawing of a design: opened on the table, kept stroke by stroke, handed over when the screen or
 * the window goes. `draft` is absent until it lies there.
 */
export function useDraft(
  designId: string,
): Readonly<{ draft: Draft | undefined; refusal: Refusal | undefined }> {
  const [onTable, setOnTable] = useState<OnTable>()
  const [refusal, setRefusal] = useState<Refusal>()
  useEffect(() => {
    let session: DraftSession | undefined
    let isGone = false
    const hurry = () => session?.hurry()
    void bridge.request('drafts.open', { designId }).then((answer) => {
      if (isGone) return
      setRefusal(answer.ok ? undefined : answer.error)
      if (!answer.ok) return
      session = new DraftSession(answer.value, port)
      setOnTable({ opened: answer.value, session })
    })
    addEventListener('pagehide', hurry)
    return () => {
      isGone = true
      removeEventListener('pagehide', hurry)
      hurry()
      setOnTable(undefined)
      void refreshAfter('drafts.stroke')
    }
  }, [designId])
  const view = useSyncExternalStore(
    onTable?.session.subscribe ?? noSubscription,
    onTable?.session.view ?? noView,
  )
  const acts = useMemo(() => (onTable === undefined ? undefined : actsOf(onTable)), [onTable])
  const draft = useMemo(
    () =>
      view === undefined || acts === undefined || onTable === undefined
        ? undefined
        : {
            ...view,
            ...acts,
            name: onTable.opened.name,
            session: onTable.session,
            canUndo: view.undoLabel !== undefined,
            canRedo: view.redoLabel !== undefined,
          },
    [view, acts, onTable],
  )
  return { draft, refusal }
}

const noSubscription = () => () => undefined
const noView = (): DraftView | undefined => undefined

function actsOf({ opened, session }: OnTable) {
  const { designId, name, tags } = opened
  async function save(note: string): Promise<Answer<CallOutput<'designs.save'>>> {
    await session.settled()
    const { body, refusal } = session.view()
    if (refusal !== undefined) return { ok: false, error: refusal }
    const saved: CallInput<'designs.save'> = { id: designId, name, tags, body: mutable(body), note }
    const answer = await bridge.request('designs.save', saved)
    if (answer.ok) {
      session.saved(answer.value.version)
      await refreshAfter('designs.save')
    }
    return answer
  }
  return {
    change: (label: string, next: DesignBody) => session.change(label, next),
    stroke: (label: string, partId: string, edit: ChartEdit) => session.stroke(label, partId, edit),
    undo: () => void session.undo(),
    redo: () => void session.redo(),
    tryAgain: () => session.tryAgain(),
    save,
  }
}

/** The contract's type of the same shape. */
function mutable(body: DesignBody): CallInput<'designs.save'>['body'] {
  return body as CallInput<'designs.save'>['body']
}
