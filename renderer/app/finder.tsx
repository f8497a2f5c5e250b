import { Dialog as Base } from '@base-ui/react/dialog'
import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import { Icon } from '../ui/icon.tsx'
import { Swatch } from '../ui/swatch.tsx'
import { type Finding, useFindings } from './use-findings.ts'
import './finder.css'

/** Find anything: rooms, acts, designs, materials, orders and pieces by a part of their names. */
export function Finder({ onClose, onKeys }: Readonly<{ onClose: () => void; onKeys: () => void }>) {
  const [typed, setTyped] = useState('')
  const [at, setAt] = useState(0)
  const findings = useFindings(typed, onKeys)
  const id = useId()
  const current = Math.min(at, findings.length - 1)

  function choose(finding: Finding | undefined): void {
    if (finding === undefined) return
    onClose()
    finding.choose()
  }

  function onKey(event: KeyboardEvent): void {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
    if (step !== undefined) {
      event.preventDefault()
      setAt((current + step + findings.length) % Math.max(1, findings.length))
    } else if (event.key === 'Enter') {
      choose(findings[current])
    }
  }

  return (
    <Base.Root open onOpenChange={(open) => !open && onClose()}>
      <Base.Portal>
        <Base.Backdrop className="dialog-dim" />
        <Base.Popup className="finder">
          <Base.Title className="unseen">Find anything</Base.Title>
          <div className="finder-field">
            <Icon name="find" />
            <input
              role="combobox"
              aria-label="Find anything"
              aria-expanded="true"
              aria-controls={`${id}-list`}
              aria-activedescendant={findings.length > 0 ? `${id}-${current}` : undefined}
              aria-autocomplete="list"
              placeholder="A room, an act, a bead, an order, a piece"
              autoComplete="off"
              spellCheck={false}
              value={typed}
              onKeyDown={onKey}
              onChange={(event) => {
                setTyped(event.target.value)
                setAt(0)
              }}
            />
          </div>
          {findings.length === 0 && (
            <p className="finder-none">Nothing of that name. Try a shorter part of it.</p>
          )}
          <div id={`${id}-list`} role="listbox" aria-label="Found" className="finder-list">
            {findings.map((finding, index) => (
              <FoundRow
                key={finding.key}
                id={`${id}-${index}`}
                finding={finding}
                isCurrent={index === current}
                onChoose={() => choose(finding)}
              />
            ))}
          </div>
        </Base.Popup>
      </Base.Portal>
    </Base.Root>
  )
}

function FoundRow({
  id,
  finding,
  isCurrent,
  onChoose,
}: Readonly<{ id: string; finding: Finding; isCurrent: boolean; onChoose: () => void }>) {
  const row = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (isCurrent) row.current?.scrollIntoView({ block: 'nearest' })
  }, [isCurrent])
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: keys go to the field, which holds the focus
    <div
      ref={row}
      id={id}
      role="option"
      tabIndex={-1}
      aria-selected={isCurrent}
      className="finder-row"
      onClick={onChoose}
    >
      {finding.look !== undefined && <Swatch look={finding.look} />}
      <span className="finder-label">{finding.label}</span>
      <span className="finder-detail">{finding.detail}</span>
      <span className="finder-kind">{finding.kind}</span>
    </div>
  )
}
