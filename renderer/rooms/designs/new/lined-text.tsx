import { type Ref, useImperativeHandle, useRef, useState } from 'react'
import { Field } from '../../../ui/field.tsx'
import './lined-text.css'

export type LinedTextHandle = Readonly<{
  /** Chooses a line, counted from 1, and puts the cursor into it. */
  goTo: (line: number) => void
}>

/** A large text with its lines numbered; marked lines stand out by a sign and a wash. */
export function LinedText({
  label,
  hint,
  missing,
  text,
  onText,
  marked,
  ref,
}: Readonly<{
  label: string
  hint: string
  /** What is said while it is empty, once the rest is to be kept. */
  missing: string
  text: string
  onText: (text: string) => void
  /** Numbers of the lines that are wrong, from 1. */
  marked: readonly number[]
  ref: Ref<LinedTextHandle>
}>) {
  const area = useRef<HTMLTextAreaElement>(null)
  const [scrolledPx, setScrolledPx] = useState(0)
  useImperativeHandle(
    ref,
    () => ({
      goTo: (line) => {
        const lines = (area.current?.value ?? '').split('\n')
        const from = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0)
        area.current?.focus()
        area.current?.setSelectionRange(from, from + (lines[line - 1]?.length ?? 0))
      },
    }),
    [],
  )
  return (
    <Field label={label} hint={hint} missing={text.trim() === '' ? missing : undefined}>
      {(control) => (
        <div className="lined">
          <div className="lined-numbers" aria-hidden="true">
            <ol style={{ transform: `translateY(${-scrolledPx}px)` }}>
              {lineNumbers(text).map((line) => (
                <li key={line} className={marked.includes(line) ? 'lined-marked' : undefined}>
                  {marked.includes(line) ? `! ${line}` : line}
                </li>
              ))}
            </ol>
          </div>
          <textarea
            {...control}
            ref={area}
            className="input lined-text"
            aria-invalid={marked.length > 0 || control['aria-invalid']}
            wrap="off"
            rows={18}
            spellCheck={false}
            value={text}
            onChange={(event) => onText(event.target.value)}
            onScroll={(event) => setScrolledPx(event.currentTarget.scrollTop)}
          />
        </div>
      )}
    </Field>
  )
}

function lineNumbers(text: string): readonly number[] {
  return text.split('\n').map((_, at) => at + 1)
}
