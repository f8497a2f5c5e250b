import { join } from 'node:path'

import { repo } from '../../../scripts/runtime.ts'

/** A file as a maker hands it over. */
export function sampleFile(name: string): string {
  return join(repo, 'tests', 'fixtures', 'samples', name)
}
