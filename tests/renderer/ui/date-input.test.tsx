import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { DateInput } from '../../../renderer/ui/date-input.tsx'

const field = (value: string, isOptional = false) =>
  renderToStaticMarkup(
    <DateInput
      label="Due"
      optional={isOptional}
      today="2026-11-25"
      value={value}
      onChange={() => {}}
    />,
  )

describe('DateInput', () => {
  it('writes a day as every screen does, with how far away it is', () => {
    const markup = field('2026-12-04')
    expect(markup).toContain('value="Fri 4 Dec"')
    expect(markup).toContain('in 9 days')
    expect(markup).not.toContain('field-error')
  })

  it('keeps what names no day as it was typed, and says what is accepted', () => {
    const markup = field('31.02.2026')
    expect(markup).toContain('value="31.02.2026"')
    expect(markup).toContain('aria-invalid="true"')
    expect(markup).toContain('is not a day of the calendar')
  })

  it('misses a day only where there must be one', () => {
    expect(field('')).toContain('Nothing was typed.')
    expect(field('', true)).not.toContain('field-error')
  })
})
