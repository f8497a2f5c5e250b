import { useState } from 'react'
import type { DesignBody, Part } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { Button, IconButton } from '../../../ui/button.tsx'
import { Notice } from '../../../ui/notice.tsx'
import { addPanel, addStrand, copyPart, hangingFrom, movePart, removePart } from './part-edits.ts'

type PartListProps = Readonly<{
  body: DesignBody
  partId: string | undefined
  format: Format
  onChange: (label: string, next: DesignBody) => void
  onPart: (partId: string) => void
}>

/** Panels and strands in the order they are worked; what goes with the one that is chosen is at hand. */
export function PartList({ body, partId, format, onChange, onPart }: PartListProps) {
  const [asked, setAsked] = useState<string>()
  const chosen = body.parts.find(({ id }) => id === partId)
  const leaving = body.parts.find(({ id }) => id === asked)
  function edit(label: string, edited: Readonly<{ body: DesignBody; partId: string }>) {
    onChange(label, edited.body)
    onPart(edited.partId)
    setAsked(undefined)
  }
  function remove(part: Part) {
    if (hangingFrom(body, part.id).length > 0) setAsked(part.id)
    else edit(`Remove ${part.name}`, removePart(body, part.id))
  }
  const panelId = chosen?.kind === 'panel' ? chosen.id : chosen?.anchor?.panelId
  return (
    <section className="parts-list" aria-labelledby="parts-head">
      <h2 id="parts-head">Parts</h2>
      <ol>
        {body.parts.map((part) => (
          <li key={part.id} className={part.kind === 'strand' ? 'parts-strand' : undefined}>
            <button
              type="button"
              className="parts-one"
              aria-current={part.id === partId}
              onClick={() => onPart(part.id)}
            >
              <span>{part.name}</span>
              <span className="parts-about">{aboutPart(part, body, format)}</span>
            </button>
          </li>
        ))}
      </ol>
      {body.parts.length === 0 && (
        <p className="designs-quiet">No parts yet: add a panel to draw on, or a strand.</p>
      )}
      {chosen !== undefined && (
        <PartActs
          part={chosen}
          body={body}
          onMove={(by) => onChange(`Move ${chosen.name}`, movePart(body, chosen.id, by))}
          onCopy={() => edit(`Copy ${chosen.name}`, copyPart(body, chosen.id))}
          onRemove={() => remove(chosen)}
        />
      )}
      {leaving !== undefined && (
        <Leaving
          part={leaving}
          body={body}
          onLeave={() => edit(`Remove ${leaving.name}`, removePart(body, leaving.id))}
          onKeep={() => setAsked(undefined)}
        />
      )}
      <div className="designs-buttons">
        <Button small icon="add" onClick={() => edit('Add a panel', addPanel(body))}>
          Panel
        </Button>
        <Button
          small
          icon="add"
          disabled={body.palette.length === 0}
          onClick={() => edit('Add a fringe', addStrand(body, 'fringe', panelId))}
        >
          Fringe
        </Button>
        <Button
          small
          icon="add"
          disabled={body.palette.length === 0}
          onClick={() => edit('Add a loop', addStrand(body, 'loop', panelId))}
        >
          Hanging loop
        </Button>
      </div>
    </section>
  )
}

function aboutPart(part: Part, { parts }: DesignBody, format: Format): string {
  const times = part.copies > 1 ? `${format.count(part.copies)} of it, ` : ''
  if (part.kind === 'panel') return `${times}${format.counted(part.chart.rows.length, 'row')}`
  const panel = parts.find(({ id }) => id === part.anchor?.panelId)
  const hangs = panel === undefined ? 'on its own' : `on ${panel.name}`
  return `${times}${part.shape}, ${hangs}`
}

function PartActs({
  part: { id, name },
  body: { parts },
  onMove,
  onCopy,
  onRemove,
}: Readonly<{
  part: Part
  body: DesignBody
  onMove: (by: -1 | 1) => void
  onCopy: () => void
  onRemove: () => void
}>) {
  return (
    <div className="parts-acts" role="toolbar" aria-label={`What to do with ${name}`}>
      <IconButton
        icon="up"
        label={`Move ${name} up`}
        disabled={parts[0]?.id === id}
        onClick={() => onMove(-1)}
      />
      <IconButton
        icon="down"
        label={`Move ${name} down`}
        disabled={parts.at(-1)?.id === id}
        onClick={() => onMove(1)}
      />
      <IconButton icon="copy" label={`Copy ${name}`} onClick={onCopy} />
      <IconButton icon="remove" label={`Remove ${name}`} onClick={onRemove} />
    </div>
  )
}

function Leaving({
  part,
  body,
  onLeave,
  onKeep,
}: Readonly<{ part: Part; body: DesignBody; onLeave: () => void; onKeep: () => void }>) {
  const names = hangingFrom(body, part.id).map(({ name }) => name)
  const what = names.length === 1 ? 'it' : 'them'
  return (
    <Notice
      kind="attention"
      title={`${part.name} holds ${listed(names)}.`}
      actions={
        <>
          <Button small kind="danger" onClick={onLeave}>
            {`Remove ${part.name} and ${what}`}
          </Button>
          <Button small onClick={onKeep}>
            Keep
          </Button>
        </>
      }
    >
      {`To keep ${what}, hang ${what} from another panel first.`}
    </Notice>
  )
}

/** Names in a sentence; of many the first and how many more. */
function listed(names: readonly string[]): string {
  if (names.length > 4) return `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`
  if (names.length < 2) return names.join('')
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
