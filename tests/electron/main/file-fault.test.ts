import { mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

import { fileFault } from '../../../electron/main/file-fault.ts'

function faultOf(work: () => unknown) {
  try {
    work()
  } catch (cause) {
    return fileFault(cause)
  }
  throw new Error('This was to fail.')
}

describe('fileFault', () => {
  it('says that a missing file is missing', () => {
    expect(faultOf(() => readFileSync('/nowhere/at/all'))).toMatchObject({ code: 'file-enoent' })
  })

  it('says that a folder is no file', () => {
    const folder = mkdtempSync(join(tmpdir(), 'tallystrand-fault-'))
    expect(faultOf(() => readFileSync(folder))).toMatchObject({ code: 'file-eisdir' })
  })

  it('tells anything else as a fault of the studio, without its inner words', () => {
    const fault = fileFault(new TypeError('x is not a function'))
    expect(fault).toMatchObject({ code: 'internal' })
    expect(JSON.stringify(fault)).not.toContain('x is not')
  })
})
