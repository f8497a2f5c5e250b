import type { Page } from '@playwright/test'
import type { CallInput, CallOutput } from '../../shared-core/contract/calls.ts'
import { designOf, panelOf } from '../shared-core/design/a-design.ts'
import { ask } from './ask.ts'
import { goTo } from './go-to.ts'

type Body = CallOutput<'drafts.open'>['body']

/** A pair of nothing yet: a panel without a row. */
export const blank = designOf([panelOf({ stitch: 'brick', rows: [] }, { copies: 2 })], {
  unitName: 'pair',
  palette: [
    { label: 'A', name: 'slate', formId: 'cylinder-11/0', colourHex: '#465a66', finish: 'matte' },
    { label: 'B', name: 'sea', formId: 'cylinder-11/0', colourHex: '#2f7d8c', finish: 'matte' },
  ],
}) as CallInput<'designs.save'>['body']

/** Saves a design of nothing yet and lays it on the table; gives its id. */
export async function newBlank(page: Page, name: string): Promise<string> {
  const { id } = await ask(page, 'designs.save', { name, tags: [], body: blank, note: '' })
  await lay(page, id)
  return id
}

/** Lays a design on the table. */
export async function lay(page: Page, id: string): Promise<void> {
  const { name } = await ask(page, 'designs.read', { id })
  await goTo(page, `#/designs/${id}/draw`)
  // By its name, since another design may have lain there before.
  await page.getByRole('heading', { level: 1, name }).waitFor()
  await page.locator('.table-desk').waitFor()
  await picture(page).focus()
}

export const picture = (page: Page) => page.locator('.bead-picture-frame')
export const place = (page: Page) => page.locator('.table-place')
export const told = (page: Page) => page.locator('.table-told')

/** What lies on the table, as it is kept in the store. */
export async function kept(page: Page, designId: string): Promise<CallOutput<'drafts.open'>> {
  return ask(page, 'drafts.open', { designId })
}

export function rowsOf({ parts }: Body): readonly string[] {
  const [panel] = parts
  return panel?.kind === 'panel' ? panel.chart.rows.map(({ cells }) => cells) : []
}

export async function keys(page: Page, pressed: readonly string[]): Promise<void> {
  for (const key of pressed) await page.keyboard.press(key)
}
