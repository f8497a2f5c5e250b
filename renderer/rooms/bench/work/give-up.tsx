import { useState } from 'react'
import { go } from '../../../app/place.ts'
import { useAct } from '../../../app/use-act.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { TextArea } from '../../../ui/text-input.tsx'
import type { BenchWork } from '../bench-places.ts'

/** Gives work up, with a word why; it can be undone. */
export function GiveUp({ work }: Readonly<{ work: BenchWork }>) {
  const [isOpen, setOpen] = useState(false)
  const [note, setNote] = useState('')
  const giveUp = useAct('bench.giveUp', { said: () => `Gave up ${work.designName}` })
  async function submit() {
    const answer = await giveUp.act({ id: work.id, note })
    if (answer.ok) go({ room: 'bench' })
  }
  return (
    <>
      <Button onClick={() => setOpen(true)}>Give up</Button>
      <SideSheet
        open={isOpen}
        title="Give this work up"
        onClose={() => setOpen(false)}
        actions={
          <Button kind="danger" busy={giveUp.isBusy} onClick={() => void submit()}>
            Give it up
          </Button>
        }
      >
        <p>Nothing is booked: the beads stay in the books, and what the work held is free again.</p>
        <TextArea label="Why" longest={2_000} optional value={note} onChange={setNote} />
        {giveUp.refusal !== undefined && <RefusalNotice refusal={giveUp.refusal} />}
      </SideSheet>
    </>
  )
}
