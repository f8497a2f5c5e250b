import type { Page } from '@playwright/test'

import { sizeWords } from '../../../renderer/rooms/designs/figures/size-words.ts'
import type { DesignReading } from '../../../shared-core/design/reading.ts'
import { ask } from '../ask.ts'
import type { Studio } from '../studio.ts'
import { extraOf, threadName } from './bill-by-core.ts'
import { openRoom, pick, press, take, write } from './controls.ts'
import { type ChartOnHand, mudflat, readByCore, tidewrack } from './design-by-core.ts'
import type { Finding } from './finding.ts'
import { format } from './job.ts'
import { figure, lastToast, table } from './screen.ts'

/** Both charts: read from their files, seen as beads with what follows from them, filled from stock. */
export async function bringInCharts(studio: Studio): Promise<readonly Finding[]> {
  const brick = await bringIn(studio, tidewrack)
  const peyote = await bringIn(studio, mudflat)
  return [...brick, ...peyote]
}

async function bringIn(studio: Studio, chart: ChartOnHand): Promise<readonly Finding[]> {
  const { page, answerDialogs } = studio
  await openRoom(page, 'Designs')
  await page.getByRole('link', { name: 'Bring in a chart' }).first().click()
  answerDialogs(chart.file)
  await press(page, 'Choose a file')
  await page.getByText('Nothing is written yet').waitFor()
  await write(page, 'Name', chart.name)
  if (chart.copies === 1) {
    await take(page, 'One piece')
    await write(page, 'What you call it', chart.unitName)
  }
  const reading = readByCore(chart)
  const seen = await firstFigures(page, chart, reading)
  await press(page, 'Add this design')
  await page.getByRole('heading', { level: 1, name: chart.name }).waitFor()
  return [...seen, ...(await chooseBeads(page, chart, reading))]
}

async function firstFigures(
  page: Page,
  { unitName, name }: ChartOnHand,
  reading: DesignReading,
): Promise<readonly Finding[]> {
  const slots = await table(page, 'Beads by slot')
  return [
    {
      what: `${name}: beads a ${unitName}`,
      screen: await figure(page, `Beads a ${unitName}`),
      core: format.count(reading.beads),
    },
    {
      what: 'Beads by slot, in the work and to have at hand',
      screen: slots
        .map((row) =>
          [row['Slot']?.slice(0, 1), row['Beads'], row['In the work'], row['To have at hand']].join(
            ' ',
          ),
        )
        .join(', '),
      core: reading.counts
        .map(({ label, count, massMg, needMg }) =>
          [label, format.count(count), format.mass(massMg.value), format.mass(needMg.value)].join(
            ' ',
          ),
        )
        .join(', '),
    },
    {
      what: 'Finished size',
      screen: await figure(page, 'Finished size'),
      core: sizeWords(reading, format),
    },
    {
      what: 'Thread in it',
      screen: await figure(page, 'Thread in it'),
      core: format.thread(reading.thread.inPieceMm.value),
    },
    {
      what: 'Time at the bench',
      screen: await figure(page, 'Time at the bench'),
      core: format.duration(reading.labour.totalS.value),
    },
  ]
}

async function chooseBeads(
  page: Page,
  { name, unitName, beads, extras }: ChartOnHand,
  reading: DesignReading,
): Promise<readonly Finding[]> {
  await press(page, 'Choose beads')
  for (const [at, bead] of beads.entries())
    await pick(page, new RegExp(`^Slot ${'ABCD'[at]},`), bead)
  for (const extra of extras) {
    await pick(page, `${extra.name}, ${extra.count} a ${unitName}`, extraOf[extra.kind])
  }
  await pick(page, 'Thread', threadName)
  await press(page, 'Save the colourway')
  await lastToast(page, 'Saved First colourway')
  const { designs } = await ask(page, 'designs.list', { search: name })
  const design = await ask(page, 'designs.read', { id: designs[0]?.id ?? '' })
  const { materials } = await ask(page, 'materials.list', {})
  const filled = design.colourways[0]?.materials ?? {}
  const nameOf = (key: string) => materials.find(({ id }) => id === filled[key])?.name ?? 'none'
  const slots = await table(page, 'Beads by slot')
  return [
    {
      what: 'Slots are filled with',
      screen: slots.map((row) => (row['Slot'] ?? '').slice(1).trim()).join(', '),
      core: beads.join(', '),
      store: beads.map((_, at) => nameOf(`slot:${'ABCD'[at]}`)).join(', '),
    },
    {
      what: `Weight of ${unitName === 'pair' ? 'one' : `a ${unitName}`}`,
      screen: await figure(page, unitName === 'pair' ? 'Weight of one' : `Weight of a ${unitName}`),
      core: format.mass(reading.unitMassMg.value / (unitName === 'pair' ? 2 : 1)),
    },
    {
      what: 'Thread to cut',
      screen: await figure(page, 'Thread to cut'),
      core: format.thread(reading.thread.spoolMm.value),
    },
  ]
}
