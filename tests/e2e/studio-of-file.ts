import { test } from '@playwright/test'

import { openStudio, type Studio } from './studio.ts'

/** One studio with the sample for all tests of a file, which run in it one after the other. */
export function studioOfFile(): () => Studio {
  test.describe.configure({ mode: 'default' })
  let studio: Studio | undefined
  test.beforeAll(async () => {
    studio = await openStudio({ sample: true })
  })
  test.afterAll(() => studio?.close())
  return () => {
    if (studio === undefined) throw new Error('The studio is open only while a test runs.')
    return studio
  }
}
