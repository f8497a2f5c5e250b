import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { Badge } from '../../../renderer/ui/badge.tsx'
import { Button } from '../../../renderer/ui/button.tsx'
import { FigureList } from '../../../renderer/ui/figure-list.tsx'
import { RefusalNotice } from '../../../renderer/ui/notice.tsx'
import { ProgressBar } from '../../../renderer/ui/progress-bar.tsx'
import { QuantityInput } from '../../../renderer/ui/quantity-input.tsx'
import { Table } from '../../../renderer/ui/table.tsx'
import { TextInput } from '../../../renderer/ui/text-input.tsx'
import { formatCount } from '../../../shared-core/units/format-number.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'

const nothing = () => {}
const grams = (text: string) =>
  renderToStaticMarkup(
    <QuantityInput label="Gross weight" text={text} onText={nothing} parse={parseMass} />,
  )
const attribute = (markup: string, name: string) =>
  new RegExp(` ${name}="([^"]*)"`).exec(markup)?.[1]

describe('TextInput', () => {
  const markup = renderToStaticMarkup(
    <TextInput
      label="Name"
      hint="As on the tag."
      error="There is no name."
      value=""
      onChange={nothing}
    />,
  )

  it('belongs to its label', () => {
    const input = /<input[^>]*>/.exec(markup)?.[0] ?? ''
    expect(attribute(markup, 'for')).toBe(attribute(input, 'id'))
  })

  it('is described by its hint and its error, and said to be wrong', () => {
    const input = /<input[^>]*>/.exec(markup)?.[0] ?? ''
    const described = (attribute(input, 'aria-describedby') ?? '').split(' ')
    expect(described).toHaveLength(2)
    for (const id of described) expect(markup).toContain(`id="${id}"`)
    expect(attribute(input, 'aria-invalid')).toBe('true')
  })
})

describe('TextInput with a bound', () => {
  const text = (value: string) =>
    renderToStaticMarkup(<TextInput label="Name" longest={120} value={value} onChange={nothing} />)

  it('keeps a text that is too long as it was pasted, and says by how much', () => {
    const markup = text('x'.repeat(10_000))
    expect(markup).toContain('x'.repeat(10_000))
    expect(markup).toContain(
      `That is ${formatCount(10_000)} characters. Shorten it to 120 at most.`,
    )
  })

  it('counts without the spaces around it', () => {
    expect(text(`  ${'x'.repeat(120)}  `)).not.toContain('field-error')
  })
})

describe('QuantityInput', () => {
  it('shows what was understood where it differs from what was typed', () => {
    expect(grams('1/2 oz')).toContain('= 14.175 g')
    expect(grams('12.5 g')).not.toContain('= ')
  })

  it('shows the parser’s refusal as the field’s error', () => {
    const markup = grams('twelve')
    expect(markup).toContain('aria-invalid="true"')
    expect(markup).toContain('field-error')
  })

  it('does not blame an empty field', () => {
    expect(grams('  ')).not.toContain('field-error')
  })
})

describe('Table', () => {
  const rows = [
    { id: 'a', name: 'brine', grams: 12 },
    { id: 'b', name: 'fog', grams: 3 },
  ]
  const markup = renderToStaticMarkup(
    <Table
      caption="Materials"
      rows={rows}
      rowKey={({ id }) => id}
      firstSort={{ key: 'grams', descending: false }}
      onOpen={nothing}
      openKey="a"
      columns={[
        { key: 'name', head: 'Material', cell: ({ name }) => name },
        {
          key: 'grams',
          head: 'On hand',
          align: 'end',
          cell: (row) => row.grams,
          sortBy: (row) => row.grams,
        },
      ]}
    />,
  )

  it('says by which column it is ordered', () => {
    expect(markup).toMatch(/aria-sort="ascending"/)
    expect(markup.indexOf('fog')).toBeLessThan(markup.indexOf('brine'))
  })

  it('names each row by its first cell, which opens it', () => {
    expect(markup).toMatch(/<th scope="row"[^>]*><button type="button" class="table-open">fog/)
  })

  it('shows what stands for it when it is empty', () => {
    const empty = (
      <Table
        caption="Materials"
        rows={[]}
        rowKey={() => ''}
        columns={[]}
        empty={<p>Bring in your stock.</p>}
      />
    )
    expect(renderToStaticMarkup(empty)).toBe('<p>Bring in your stock.</p>')
  })

  it('draws a long table by window and says how long it is', () => {
    const many = Array.from({ length: 2_000 }, (_, index) => ({ id: String(index) }))
    const long = renderToStaticMarkup(
      <Table
        caption="Movements"
        rows={many}
        rowKey={({ id }) => id}
        columns={[{ key: 'id', head: 'Number', cell: ({ id }) => id }]}
      />,
    )
    expect(long).toContain('aria-rowcount="2001"')
    expect(long.match(/<tr/g)?.length).toBeLessThan(60)
  })
})

describe('FigureList', () => {
  const markup = renderToStaticMarkup(
    <FigureList
      figures={[
        { label: 'Mass', value: '18.4\u00a0g', basis: 'estimated', range: '17.9 g to 18.9 g' },
        { label: 'Thread', value: undefined },
      ]}
    />,
  )

  it('tells what a figure rests on and its range, for eye and ear', () => {
    expect(markup).toContain('aria-label="estimated"')
    expect(markup).toContain('estimated, 17.9 g to 18.9 g')
  })

  it('sets the unit apart from the digits', () => {
    expect(markup).toContain('18.4<span class="figure-unit">\u00a0g</span>')
  })

  it('holds the place of a figure that is not there yet', () => {
    expect(markup).toContain('figure-waiting')
  })
})

describe('states', () => {
  it('have a shape of their own each', () => {
    const tones = ['good', 'attention', 'bad', 'quiet', 'busy'] as const
    const shapes = tones.map((tone) => {
      const markup = renderToStaticMarkup(<Badge tone={tone}>word</Badge>)
      return attribute(markup, 'd')
    })
    expect(new Set(shapes).size).toBe(tones.length)
  })

  it('of a busy button keep its place and say so', () => {
    const markup = renderToStaticMarkup(<Button busy>Save</Button>)
    expect(markup).toContain('aria-busy="true"')
    expect(markup).toContain('aria-disabled="true"')
    expect(markup).not.toContain(' disabled')
  })

  it('of long work show how far it has come and the way out', () => {
    const markup = renderToStaticMarkup(
      <ProgressBar label="Reading" done={0.426} onCancel={nothing} />,
    )
    expect(markup).toContain('Reading 42 %')
    expect(markup).toContain('Cancel')
  })
})

describe('RefusalNotice', () => {
  it('says what was found, on which line, and what to do', () => {
    const refusal = {
      code: 'x',
      message: 'The weight “abc” is no number.',
      next: 'Write 12.5 g.',
      line: 7,
    }
    const markup = renderToStaticMarkup(<RefusalNotice refusal={refusal} />)
    expect(markup).toContain('role="alert"')
    expect(markup).toContain('Line 7: The weight “abc” is no number.')
    expect(markup).toContain('Write 12.5 g.')
  })
})

describe('a field that lacks something', () => {
  const lacks = (markup: string) => markup.includes('data-lacks')
  const input = (text: string, said: Readonly<{ optional?: boolean; missing?: string | null }>) =>
    renderToStaticMarkup(
      <QuantityInput label="Weight" text={text} onText={nothing} parse={parseMass} {...said} />,
    )

  it('is a figure that was left empty, unless it may be', () => {
    expect(lacks(input('', {}))).toBe(true)
    expect(lacks(input('  ', { missing: 'Say how much.' }))).toBe(true)
    expect(lacks(input('12 g', {}))).toBe(false)
    expect(lacks(input('', { optional: true }))).toBe(false)
    expect(lacks(input('', { missing: null }))).toBe(false)
  })

  it('is a text that is needed and holds nothing but spaces', () => {
    const name = (value: string, missing?: string) =>
      lacks(
        renderToStaticMarkup(
          <TextInput label="Name" value={value} missing={missing} onChange={nothing} />,
        ),
      )
    expect(name(' ', 'Give it a name.')).toBe(true)
    expect(name('tar', 'Give it a name.')).toBe(false)
    expect(name('')).toBe(false)
  })

  it('says nothing of it before it is asked for', () => {
    const markup = input('', { missing: 'Say how much.' })
    expect(markup).not.toContain('Say how much.')
    expect(markup).not.toContain('aria-invalid')
  })
})
