import { copyFileSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'

import { FuseV1Options, FuseVersion, flipFuses } from '@electron/fuses'

import { repo } from '../runtime.ts'
import { linkFolder } from './link-folder.ts'

const folder = join(repo, 'release', 'under-test')

/** The packaged program that end-to-end tests drive. */
export function packagedUnderTest(): string {
  return join(folder, 'tallystrand')
}

/**
 * Lays a twin beside the packaged app: the same files, linked, but for the one switch that lets
 * tests attach to the main process, which a release keeps off.
 */
export async function makeTwinForTests(packaged: string): Promise<void> {
  rmSync(folder, { recursive: true, force: true })
  linkFolder(packaged, folder)
  const executable = packagedUnderTest()
  // A copy of its own first: the switch is a byte inside the program.
  copyFileSync(executable, `${executable}.own`)
  renameSync(`${executable}.own`, executable)
  await flipFuses(executable, {
    version: FuseVersion.V1,
    [FuseV1Options.EnableNodeCliInspectArguments]: true,
  })
}
