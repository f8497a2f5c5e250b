import { describe, expect, it } from 'vitest'
import { missingScripts } from '../../../electron/service/documents/fonts.ts'

describe('missingScripts', () => {
  it('names the scripts that would print as boxes, and none that are printed', () => {
    expect(missingScripts(['Łódź Ωμέγα Жемчуг 38 € ½ ×'])).toEqual([])
    expect(missingScripts(['ज्वार क्षितिज', 'יָמִים', '潮の色'])).toEqual([])
    expect(missingScripts(['한글'])).toEqual(['Korean'])
  })
})
