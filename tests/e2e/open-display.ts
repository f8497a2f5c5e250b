import { existsSync } from 'node:fs'

import { buildStudio } from '../../scripts/build.ts'
import { openDisplay } from '../../scripts/display.ts'
import { packagedUnderTest } from '../../scripts/package/under-test.ts'

/** One virtual display for the whole run, unless there is one already, and a current build. */
export default async function openDisplayForTests(): Promise<() => void> {
  if (process.env['TALLYSTRAND_APP'] === 'packaged') requirePackage()
  else await buildStudio()
  const display = await openDisplay()
  if (display.name !== undefined) process.env['DISPLAY'] = display.name
  return display.close
}

function requirePackage(): void {
  if (existsSync(packagedUnderTest())) return
  throw new Error(
    'There is no packaged app to test yet. Run `npm run package -- --for-tests` first.',
  )
}
