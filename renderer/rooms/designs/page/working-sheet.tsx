import { useEffect, useState } from 'react'
import type { DesignBody, RouteSettings } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { useAct } from '../../../app/use-act.ts'
import { Button } from '../../../ui/button.tsx'
import { Checkbox } from '../../../ui/checkbox.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { Select } from '../../../ui/select.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { RouteFields } from '../parts/route-fields.tsx'
import type { DesignDetail } from './open-design.ts'
import { workingWords } from './working-words.ts'

type Body = DesignDetail['body']
type Settings = Body['parts'][number] & { kind: 'panel' }

/** Where the work starts and how it is locked; the route and its figures follow every choice. */
export function WorkingSheet({
  design,
  format,
  onTry,
  onClose,
}: Readonly<{
  design: DesignDetail
  format: Format
  onTry: (body: DesignBody) => void
  onClose: () => void
}>) {
  const [body, setBody] = useState(design.body)
  const panels = body.parts.filter((part): part is Settings => part.kind === 'panel')
  const [panelId, setPanelId] = useState(panels[0]?.id ?? '')
  const panel = panels.find(({ id }) => id === panelId)
  const save = useAct('designs.save', {
    said: ({ version }, { name }) => `Saved version ${version} of ${name}`,
    of: body,
  })
  useEffect(() => onTry(body), [onTry, body])

  function set(route: RouteSettings) {
    setBody({
      ...body,
      parts: body.parts.map((part) =>
        part.kind === 'panel' && part.id === panelId ? ({ ...part, route } as Settings) : part,
      ),
    })
  }
  async function keep() {
    const { id, name, tags } = design
    const words = panels.map(({ route }) => workingWords(route, format))
    if (body.threadStrands === 2) words.push('Thread doubled')
    const note = words.join('; ')
    const saved = await save.act({ id, name, tags, body, note })
    if (saved.ok) onClose()
  }
  return (
    <SideSheet
      open
      title="How it is worked"
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" icon="check" busy={save.isBusy} onClick={() => void keep()}>
            Save as a new version
          </Button>
          <Button onClick={onClose}>Leave as it was</Button>
        </>
      }
    >
      <p className="designs-quiet">
        What you leave open the studio chooses: fewest joins, then least thread.
      </p>
      {panels.length > 1 && (
        <Select
          label="Panel"
          value={panelId}
          options={panels.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setPanelId}
        />
      )}
      {panel === undefined ? (
        <p>This design has no panel, so there is nothing to choose here.</p>
      ) : (
        <RouteFields
          key={panelId}
          asTyped
          panel={panel}
          format={format}
          onChange={(_, route) => set(route)}
        />
      )}
      <Checkbox
        label="Thread worked doubled"
        hint="Two strands in every pass: twice the thread, and holes fill sooner."
        checked={body.threadStrands === 2}
        onChange={(doubled) => setBody(withStrands(body, doubled))}
      />
      {save.refusal !== undefined && <RefusalNotice refusal={save.refusal} />}
    </SideSheet>
  )
}

/** The design with its thread doubled, or as it was before: single is what a body says by saying nothing. */
function withStrands({ threadStrands: _, ...body }: Body, doubled: boolean): Body {
  return doubled ? { ...body, threadStrands: 2 } : body
}
