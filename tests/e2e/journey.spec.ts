import { mkdirSync } from 'node:fs'

import { expect, test } from '@playwright/test'

import type { Finding } from './journey/finding.ts'
import { inTheSample } from './journey/in-the-sample.ts'
import { closeAndReopen, journey } from './journey.ts'
import { openStudio } from './studio.ts'

// Every figure is read off the screen, computed by the core from the same files, and asked of the store.

test('one order goes from the chart to the shelf, and the screen, the core and the store agree', async () => {
  test.setTimeout(180_000)
  const folder = test.info().outputPath('journey')
  mkdirSync(folder, { recursive: true })
  const open = () => openStudio({ userDataDir: `${folder}/user` })
  let studio = await open()
  for (const { title, go } of journey) {
    await test.step(title, async () => expectAgreement(await go(studio, folder)))
  }
  await test.step('Close and open again', async () => {
    const again = await closeAndReopen(studio, open)
    studio = again.studio
    expectAgreement(again.findings)
  })
  await studio.close()
})

test('the same way is open in the Saltmarsh sample', async () => {
  test.slow()
  const studio = await openStudio({ sample: true })
  expectAgreement(await inTheSample(studio))
  await studio.close()
})

/** All figures at once, so that a failure shows every one that differs. */
function expectAgreement(findings: readonly Finding[]): void {
  expect(findings.length).toBeGreaterThan(0)
  const screen = findings.map(({ what, screen: seen }) => [what, seen])
  expect(screen).toEqual(findings.map(({ what, screen: seen, core = seen }) => [what, core]))
  expect(screen).toEqual(findings.map(({ what, screen: seen, store = seen }) => [what, store]))
}
