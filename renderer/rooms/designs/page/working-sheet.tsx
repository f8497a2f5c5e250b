import { useEffect, useState } from 'react'
import type { DesignBody, Panel, RouteSettings } from '../../../../shared-core/design/design.ts'
import { parseCount } from '../../../../shared-core/units/parse-count.ts'
import { parseThread } from '../../../../shared-core/units/parse-length.ts'
import type { Format } from '../../../app/format.ts'
import { useAct } from '../../../app/use-act.ts'
import { Button } from '../../../ui/button.tsx'
import { Checkbox } from '../../../ui/checkbox.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
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
    const words = panels.map(({ route }) => workingWords(route))
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
          <Button
            kind="primary"
            icon="check"
            busy={save.isBusy}
            disabled={body === design.body}
            onClick={() => void keep()}
          >
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
        <SettingsFields key={panelId} panel={panel} format={format} onChange={set} />
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

type Change = Readonly<{ [K in keyof RouteSettings]?: RouteSettings[K] | undefined }>

function SettingsFields({
  panel: { chart, route },
  format,
  onChange,
}: Readonly<{ panel: Panel; format: Format; onChange: (route: RouteSettings) => void }>) {
  const set = (change: Change) => onChange(withoutOpen({ ...route, ...change }))
  const { stitch } = chart
  const [row, setRow] = useState(route.startRow === undefined ? '' : String(route.startRow + 1))
  const [working, setWorking] = useState(
    route.workingLengthMm === undefined ? '' : format.thread(route.workingLengthMm),
  )
  return (
    <>
      {(stitch === 'brick' || stitch === 'peyote') && (
        <QuantityInput
          label="Start row"
          optional
          hint={`Counted from the top, 1 to ${chart.rows.length}`}
          text={row}
          parse={(typed) => parseCount(typed, { decimal: format.decimal })}
          onText={(typed, count) => {
            setRow(typed)
            if (typed.trim() === '') set({ startRow: undefined })
            else if (count !== undefined && count >= 1 && count <= chart.rows.length) {
              set({ startRow: count - 1 })
            }
          }}
        />
      )}
      <SegmentedChoice
        label="Side it starts at"
        value={route.startSide ?? 'open'}
        options={[
          { value: 'open', label: 'Studio’s choice' },
          { value: 'left', label: 'Left' },
          { value: 'right', label: 'Right' },
        ]}
        onChange={(side) => set({ startSide: side === 'open' ? undefined : side })}
      />
      {stitch === 'brick' && (
        <>
          <SegmentedChoice
            label="Start"
            value={route.start ?? 'open'}
            options={[
              { value: 'open', label: 'Studio’s choice' },
              { value: 'ladder', label: 'Ladder row' },
              { value: 'two-bead', label: 'Two beads' },
            ]}
            onChange={(start) => set({ start: start === 'open' ? undefined : start })}
          />
          <Checkbox
            label="Lock pass at every row’s start"
            hint="It is made anyway where a row shrinks at its start."
            checked={route.lockEveryRow ?? false}
            onChange={(lock) => set({ lockEveryRow: lock || undefined })}
          />
        </>
      )}
      {(stitch === 'square' || stitch === 'ladder') && (
        <Checkbox
          label="A second pass through each row"
          checked={route.reinforce ?? false}
          onChange={(reinforce) => set({ reinforce: reinforce || undefined })}
        />
      )}
      <QuantityInput
        label="Longest thread you like to work with"
        optional
        hint="Such as 1,6 m"
        text={working}
        parse={(typed) => parseThread(typed, { decimal: format.decimal, unit: 'm' })}
        onText={(typed, mm) => {
          setWorking(typed)
          if (typed.trim() === '') set({ workingLengthMm: undefined })
          else if (mm !== undefined && mm >= 300 && mm <= 20_000) set({ workingLengthMm: mm })
        }}
      />
    </>
  )
}

/** The design with its thread doubled, or as it was before: single is what a body says by saying nothing. */
function withStrands({ threadStrands: _, ...body }: Body, doubled: boolean): Body {
  return doubled ? { ...body, threadStrands: 2 } : body
}

/** Settings without what was left open. */
function withoutOpen(change: Change): RouteSettings {
  return Object.fromEntries(
    Object.entries(change).filter(([, value]) => value !== undefined),
  ) as RouteSettings
}
