import { type KeyboardEvent, useRef, useState } from 'react'
import {
  addDays,
  type CalendarDate,
  calendarDate,
  isCalendarDate,
} from '../../shared-core/units/calendar-date.ts'
import { formatDate, formatRelativeDays } from '../../shared-core/units/format-date.ts'
import { parseDay } from '../../shared-core/units/parse-day.ts'
import { IconButton } from './button.tsx'
import { Field, type FieldSays } from './field.tsx'
import './date-input.css'
import { refusalWords } from './refusal-words.ts'

type DateInputProps = Omit<FieldSays, 'missing'> &
  Readonly<{
    /** `2026-12-04`, or empty. */
    value: string
    /** Gives `2026-12-04`, empty, or what was typed as it stands while it names no day. */
    onChange: (value: string) => void
    /** The day that `in 9 days` is counted from. */
    today: string
  }>

/** A day, typed as people say it (4 Dec, 4.12.2026, in 9 days) or taken from a calendar; arrows go a day on. */
export function DateInput({ label, hint, error, optional, labelHidden, ...rest }: DateInputProps) {
  const today = calendarDate(rest.today)
  const { text, read, type, settle } = useTypedDay(rest.value, rest.onChange, today)
  const isRefused = !read.ok && !(text.trim() === '' && optional === true)
  function step(event: KeyboardEvent): void {
    const days = { ArrowUp: 1, ArrowDown: -1 }[event.key]
    if (days === undefined || !read.ok) return
    event.preventDefault()
    type(formatDate(addDays(read.value.value, days), today))
  }
  return (
    <Field
      {...{ label, hint, optional, labelHidden }}
      error={isRefused ? refusalWords(read.error) : error}
    >
      {(control) => (
        <>
          <input
            {...control}
            className="input date-input"
            autoComplete="off"
            spellCheck={false}
            value={text}
            onChange={(event) => type(event.target.value)}
            onBlur={settle}
            onKeyDown={step}
          />
          <output className="date-away" htmlFor={control.id}>
            {read.ok && sayDay(read.value, text, today)}
          </output>
          <CalendarPick of={label} value={rest.value} onPick={type} />
        </>
      )}
    </Field>
  )
}

/** The text of the field: as typed while it gave this value, else the day in words; read as a day. */
function useTypedDay(value: string, onChange: (value: string) => void, today: CalendarDate) {
  const [typed, setTyped] = useState({ text: '', value: '' })
  const written = isCalendarDate(value) ? formatDate(value, today) : value
  const text = typed.value === value && typed.text !== '' ? typed.text : written
  function type(next: string): void {
    const day = parseDay(next, { today })
    const given = day.ok ? day.value.value : next.trim()
    setTyped({ text: next, value: given })
    onChange(given)
  }
  const settle = () => setTyped({ text: '', value: '' })
  return { text, read: parseDay(text, { today }), type, settle }
}

/** A button that opens the system's own calendar. */
function CalendarPick({
  of,
  value,
  onPick,
}: Readonly<{ of: string; value: string; onPick: (day: string) => void }>) {
  const native = useRef<HTMLInputElement>(null)
  return (
    <span className="date-calendar">
      <input
        ref={native}
        type="date"
        className="date-native"
        tabIndex={-1}
        aria-hidden="true"
        value={isCalendarDate(value) ? value : ''}
        onChange={(event) => event.target.value !== '' && onPick(event.target.value)}
      />
      <IconButton
        icon="calendar"
        label={`${of}: take it from a calendar`}
        onClick={() => native.current?.showPicker()}
      />
    </span>
  )
}

/** How far away the day is, and which one where that is not what stands in the field. */
function sayDay(
  read: Readonly<{ value: CalendarDate; understood: string }>,
  text: string,
  today: CalendarDate,
): string {
  const isWritten = text.trim() === formatDate(read.value, today)
  return isWritten ? formatRelativeDays(read.value, today) : `= ${read.understood}`
}
