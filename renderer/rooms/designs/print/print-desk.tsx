import { useMemo, useState } from 'react'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { saveFile, viewFile } from '../../../app/files.ts'
import { hrefTo } from '../../../app/place.ts'
import { refusalOf } from '../../../app/refusal-error.ts'
import { Room } from '../../../app/room.tsx'
import { ask, useCall } from '../../../app/use-call.ts'
import { Button } from '../../../ui/button.tsx'
import { Notice, RefusalNotice } from '../../../ui/notice.tsx'
import { ProgressBar } from '../../../ui/progress-bar.tsx'
import type { DesignDetail, MaterialRow } from '../page/open-design.ts'
import { slotBeads } from '../page/slot-beads.ts'
import { ExportList } from './export-list.tsx'
import { PageList } from './page-list.tsx'
import { SheetOptions } from './sheet-options.tsx'
import { type SheetChoice, sheetWish } from './sheet-wish.ts'
import { useSettled } from './use-settled.ts'
import './print.css'

type PrintDeskProps = Readonly<{
  design: DesignDetail
  materials: readonly MaterialRow[]
  choice: SheetChoice
  onChoice: (choice: SheetChoice) => void
}>

const SHAPES = { a4: 297 / 210, letter: 279.4 / 215.9 } as const
const TYPING_MS = 500

/** The sheet's pages in the middle, what it is to be at the right. */
export function PrintDesk({ design, materials, choice, onChoice }: PrintDeskProps) {
  const settledTerms = useSettled(choice.terms, TYPING_MS)
  const isTermsFit = settledTerms.length <= 500
  const wish = useMemo(
    () => sheetWish(design.id, { ...choice, terms: isTermsFit ? settledTerms : '' }),
    [design.id, choice, settledTerms, isTermsFit],
  )
  const first = useCall('designs.sheetPage', { ...wish, number: 1 })
  const colourway = design.colourways.find(({ id }) => id === choice.colourwayId)
  const looks = useMemo(
    () => slotBeads(design.body.palette, colourway?.materials ?? {}, materials),
    [design.body, colourway, materials],
  )
  const { making, refusal, make } = useMaking()
  const makeSheet = (then: Then) => void make(() => ask('designs.sheet', wish), then)
  return (
    <Room
      fill
      title="Print and export"
      back={{ href: hrefTo({ room: 'designs', id: design.id }), label: design.name }}
      actions={
        <>
          <Button icon="print" busy={making === 'view'} onClick={() => makeSheet('view')}>
            Open to print
          </Button>
          <Button
            kind="primary"
            icon="file"
            busy={making === 'save'}
            onClick={() => makeSheet('save')}
          >
            Save PDF
          </Button>
        </>
      }
      aside={
        <>
          <SheetOptions design={design} choice={choice} onChange={onChoice} />
          <ExportList
            name={design.name}
            body={design.body}
            looks={looks}
            of={{
              designId: design.id,
              colourwayId: choice.colourwayId,
              version: choice.version,
            }}
          />
        </>
      }
    >
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a place that scrolls is reached by the keyboard */}
      <section className="print-stage" aria-label="Pages" tabIndex={0}>
        {making !== undefined && (
          <ProgressBar label="Making the sheet…" onCancel={() => void ask('documents.stop', {})} />
        )}
        {refusal !== undefined && <RefusalNotice refusal={refusal} />}
        {first.refusal !== undefined && (
          <RefusalNotice
            refusal={first.refusal}
            actions={<Button onClick={first.askAgain}>Try again</Button>}
          />
        )}
        {first.value?.notes.map((note) => (
          <Notice key={note} title={note} />
        ))}
        {first.value === undefined ? (
          first.refusal === undefined && <p role="status">Laying out the sheet…</p>
        ) : (
          <PageList wish={wish} pages={first.value.pages} shape={SHAPES[choice.paper]} />
        )}
      </section>
    </Room>
  )
}

type Then = 'save' | 'view'

/** Making the PDF, and then saving it or opening it where it can be printed. */
function useMaking() {
  const [making, setMaking] = useState<Then>()
  const [refusal, setRefusal] = useState<Refusal>()
  async function make(
    ready: () => Promise<Readonly<{ fileName: string; base64: string }>>,
    then: Then,
  ) {
    setMaking(then)
    setRefusal(undefined)
    try {
      const file = await ready()
      setMaking(undefined)
      if (then === 'save') await saveFile('Save the pattern sheet', file)
      else await viewFile(file)
    } catch (error) {
      setRefusal(refusalOf(error))
    } finally {
      setMaking(undefined)
    }
  }
  return { making, refusal, make }
}
