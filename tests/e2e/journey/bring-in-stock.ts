import type { Page } from '@playwright/test'

import { ask } from '../ask.ts'
import type { Studio } from '../studio.ts'
import { openRoom, press, write } from './controls.ts'
import type { Finding } from './finding.ts'
import { format } from './job.ts'
import { figure, lastToast, plain, read, tableRow } from './screen.ts'
import { beadsByCore, stockFile } from './stock-by-core.ts'

/** Half a spool, as a hand measures it: the list does not say how much thread there is. */
export const threadOnSpool = '57 m'

/** The spreadsheet: previewed, its two bad rows named, confirmed, then the spool measured. */
export async function bringInStock({ page, answerDialogs }: Studio): Promise<readonly Finding[]> {
  await openRoom(page, 'Stock')
  await page.getByRole('link', { name: 'Bring in a spreadsheet' }).first().click()
  answerDialogs(stockFile)
  await press(page, 'Choose a file')
  const badLines = page.getByText(/^Line \d+/)
  await badLines.first().waitFor()
  const { materials } = await ask(page, 'materials.list', {})
  const understood = await read(page.getByText('is read as'))
  const preview: readonly Finding[] = [
    {
      what: 'Read as',
      screen: understood,
      core: 'stock-list.csv is read as UTF-8 with mark, columns parted by semicolons. Nothing is written yet.',
    },
    {
      what: 'Rows that cannot be taken',
      screen: (await badLines.allInnerTexts()).map(plain).join('; '),
      core: 'Line 14 EW-02; Line 16 XX',
    },
    {
      what: 'Before she confirms',
      screen: understood.slice(-'Nothing is written yet.'.length),
      store: materials.length === 0 ? 'Nothing is written yet.' : `${materials.length} materials`,
    },
  ]
  await press(page, /^Bring in \d+ rows, leave out 2$/)
  const toast = await lastToast(page, 'Brought in')
  await page.getByRole('heading', { level: 1, name: 'Stock' }).waitFor()
  return [
    ...preview,
    { what: 'Then', screen: toast, core: 'Brought in 12 materials in 13 lots' },
    ...(await stockFigures(page)),
    ...(await measureSpool(page)),
  ]
}

async function stockFigures(page: Page): Promise<readonly Finding[]> {
  const byCore = beadsByCore()
  const { materials } = await ask(page, 'materials.list', {})
  const figures: Finding[] = [
    {
      what: 'Materials in stock',
      screen: await figure(page, 'Materials'),
      store: String(materials.length),
    },
    {
      what: 'Stock is worth at cost',
      screen: await figure(page, 'Worth at cost'),
      store: format.money(materials.reduce((sum, { valueMinor }) => sum + valueMinor, 0)),
    },
  ]
  for (const [code, { mg, worthMinor }] of byCore) {
    const material = materials.find((one) => one.code === code)
    if (material === undefined) throw new Error(`The store has no ${code}.`)
    const row = await tableRow(page, 'Materials', material.name)
    figures.push({
      what: `${material.name} on hand, and worth`,
      screen: `${row['On hand']}, ${row['Worth']}`,
      core: `${format.mass(mg)}, ${format.money(worthMinor)}`,
      store: `${format.mass(material.onHand)}, ${format.money(material.valueMinor)}`,
    })
  }
  return figures
}

async function measureSpool(page: Page): Promise<readonly Finding[]> {
  await page.getByRole('button', { name: /^braided thread/ }).click()
  await press(page, 'Count')
  await write(page, 'Counted', threadOnSpool)
  await press(page, 'Set what is on hand')
  await lastToast(page, 'Counted braided thread')
  const { materials } = await ask(page, 'materials.list', { search: 'TH-06' })
  return [
    {
      what: 'Thread on the spool',
      screen: await figure(page, 'On hand'),
      core: format.thread(57_000),
      store: format.thread(materials[0]?.onHand ?? 0),
    },
  ]
}
