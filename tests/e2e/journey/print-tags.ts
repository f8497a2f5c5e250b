import { readFileSync } from 'node:fs'
import { join } from 'node:path'

import { ask } from '../ask.ts'
import type { Studio } from '../studio.ts'
import { choose, openRoom, press } from './controls.ts'
import type { Finding } from './finding.ts'
import { job } from './job.ts'
import { lastToast } from './screen.ts'

export const tagsFile = 'tags.pdf'

/** Tags for all pieces on the Shelf, saved as a PDF where she says. */
export async function printTags(
  { page, answerDialogs }: Studio,
  folder: string,
): Promise<readonly Finding[]> {
  await openRoom(page, 'Shelf')
  await page.getByRole('checkbox', { name: /^Choose all/ }).check()
  await press(page, `Print ${job.made} tags`)
  await choose(page, 'Price on the tag', job.market)
  answerDialogs(join(folder, tagsFile))
  await press(page, 'Make the PDF')
  const toast = await lastToast(page, 'Saved')
  const pdf = readFileSync(join(folder, tagsFile), 'latin1')
  const { pieces } = await ask(page, 'pieces.list', { state: 'here' })
  const { channels } = await ask(page, 'workshop.read', {})
  const channelId = channels.find(({ name }) => name === job.market)?.id ?? ''
  const made = await ask(page, 'tags.print', {
    pieceIds: pieces.map(({ id }) => id),
    paper: 'a4',
    channelId,
  })
  return [
    { what: 'Tags', screen: toast, core: `Saved ${tagsFile} in ${folder}` },
    {
      what: 'Pages of tags',
      screen: String(pdf.startsWith('%PDF-') ? pdf.match(/\/Type\s*\/Page\b/g)?.length : 'no PDF'),
      core: '1',
      store: String(made.pages),
    },
  ]
}
